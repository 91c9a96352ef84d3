package buildup.packing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Classes in which each lambda and each method reference is a class of its own, as if it had been written as an inner
 * class. Java else makes those classes as it comes to each for the first time: a report comes to 1,800, and took a fifth
 * of its time for them, also where the archive of classes held them. What records do of themselves is written out too; see
 * {@link RecordMethods}.
 */
final class SpelledOut {
    private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";

    private SpelledOut() {}

    /**
     * Spells them out.
     *
     * @param classes by their internal names; all of a nest, where there is one of it
     * @return those that changed, and behind them the new ones, by their internal names
     */
    static Map<String, byte[]> of(Map<String, byte[]> classes) {
        Map<String, ClassNode> nodes = new LinkedHashMap<>();
        Map<String, byte[]> made = new LinkedHashMap<>();
        classes.forEach((name, bytes) -> {
            ClassNode node = new ClassNode();
            new ClassReader(bytes).accept(node, 0);
            nodes.put(name, node);
        });
        Map<String, ClassNode> changed = new LinkedHashMap<>();
        for (ClassNode node : nodes.values()) {
            if (RecordMethods.spell(node)) {
                changed.put(node.name, node);
            }
            Map<String, byte[]> own = spell(node);
            if (!own.isEmpty()) {
                ClassNode host = node.nestHostClass == null
                        ? node
                        : Objects.requireNonNull(nodes.get(node.nestHostClass), node.nestHostClass);
                admit(own.keySet(), host);
                changed.put(node.name, node);
                changed.put(host.name, host);
                made.putAll(own);
            }
        }
        Map<String, byte[]> all = new LinkedHashMap<>();
        changed.forEach((name, node) -> all.put(name, written(node)));
        all.putAll(made);
        return all;
    }

    /** As members of its nest, they reach what is private in it. */
    private static void admit(Iterable<String> names, ClassNode host) {
        List<String> members = host.nestMembers == null ? new ArrayList<>() : host.nestMembers;
        names.forEach(members::add);
        host.nestMembers = members;
    }

    /** Puts a class in the place of each lambda of a class, and gives those. */
    private static Map<String, byte[]> spell(ClassNode node) {
        Map<String, byte[]> made = new LinkedHashMap<>();
        for (MethodNode method : node.methods) {
            for (AbstractInsnNode step : method.instructions.toArray()) {
                if (step instanceof InvokeDynamicInsnNode site && isLambda(site.bsm)) {
                    String name = node.name + "$$" + (made.size() + 1);
                    LambdaClass lambda = new LambdaClass(name, node, site);
                    made.put(name, lambda.written());
                    method.instructions.set(step, in(name, site));
                }
            }
        }
        return made;
    }

    /** Those that can be written to a file, or have several interfaces, come from another method, and stay. */
    private static boolean isLambda(Handle bootstrap) {
        return bootstrap.getOwner().equals(FACTORY) && bootstrap.getName().equals("metafactory");
    }

    private static AbstractInsnNode in(String name, InvokeDynamicInsnNode site) {
        return Type.getArgumentTypes(site.desc).length == 0
                ? new FieldInsnNode(
                        Opcodes.GETSTATIC,
                        name,
                        LambdaClass.ONE,
                        Type.getObjectType(name).getDescriptor())
                : new MethodInsnNode(Opcodes.INVOKESTATIC, name, LambdaClass.OF, site.desc, false);
    }

    private static byte[] written(ClassNode node) {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        node.accept(writer);
        return writer.toByteArray();
    }
}
