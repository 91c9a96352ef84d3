package buildup.packing;

import java.util.Objects;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * What a record does of itself where it is compared and where it is a key, written out. Java else puts it together as it
 * comes to each record for the first time, out of parts that it makes anew at every start: 0.01 s for the first. The values
 * are those of {@code java.lang.runtime.ObjectMethods}, so that nothing comes in another order.
 */
final class RecordMethods {
    private static final String FACTORY = "java/lang/runtime/ObjectMethods";
    private static final Type OBJECT = Type.getType(Object.class);
    private static final Type OBJECTS = Type.getType(Objects.class);
    private static final Method SAME = Method.getMethod("boolean equals (Object, Object)");
    private static final Method HASH = Method.getMethod("int hashCode (Object)");

    private final Type self;
    private final GeneratorAdapter code;

    private RecordMethods(ClassNode home, MethodNode method) {
        this.self = Type.getObjectType(home.name);
        this.code = new GeneratorAdapter(method, method.access, method.name, method.desc);
    }

    /** Writes them out in a class; tells whether there were any. */
    static boolean spell(ClassNode home) {
        boolean any = false;
        for (MethodNode method : home.methods) {
            for (AbstractInsnNode step : method.instructions.toArray()) {
                if (step instanceof InvokeDynamicInsnNode site
                        && site.bsm.getOwner().equals(FACTORY)
                        && !site.name.equals("toString")) {
                    method.instructions.clear();
                    method.localVariables = null;
                    RecordMethods made = new RecordMethods(home, method);
                    if (site.name.equals("equals")) {
                        made.equal(site);
                    } else {
                        made.hash(site);
                    }
                    any = true;
                }
            }
        }
        return any;
    }

    /** The other is one of these, and each part equals its part; numbers as their classes compare them. */
    private void equal(InvokeDynamicInsnNode site) {
        Label differ = code.newLabel();
        code.loadArg(0);
        code.instanceOf(self);
        code.ifZCmp(GeneratorAdapter.EQ, differ);
        for (int i = 2; i < site.bsmArgs.length; i++) {
            Handle part = (Handle) site.bsmArgs[i];
            Type type = Type.getType(part.getDesc());
            code.loadThis();
            code.getField(self, part.getName(), type);
            code.loadArg(0);
            code.checkCast(self);
            code.getField(self, part.getName(), type);
            if (type.getSort() == Type.DOUBLE || type.getSort() == Type.FLOAT) {
                code.invokeStatic(Adapting.boxed(type), new Method("compare", Type.INT_TYPE, new Type[] {type, type}));
                code.ifZCmp(GeneratorAdapter.NE, differ);
            } else if (Adapting.isPrimitive(type)) {
                code.ifCmp(type, GeneratorAdapter.NE, differ);
            } else {
                code.invokeStatic(OBJECTS, SAME);
                code.ifZCmp(GeneratorAdapter.EQ, differ);
            }
        }
        code.push(true);
        code.returnValue();
        code.mark(differ);
        // nothing was left on the stack or in a variable: as at the beginning
        code.visitFrame(
                Opcodes.F_NEW, 2, new Object[] {self.getInternalName(), OBJECT.getInternalName()}, 0, new Object[0]);
        code.push(false);
        code.returnValue();
        code.endMethod();
    }

    /** 31 times what came before and the hash of the next part, from 0. */
    private void hash(InvokeDynamicInsnNode site) {
        code.push(0);
        for (int i = 2; i < site.bsmArgs.length; i++) {
            Handle part = (Handle) site.bsmArgs[i];
            Type type = Type.getType(part.getDesc());
            code.push(31);
            code.math(GeneratorAdapter.MUL, Type.INT_TYPE);
            code.loadThis();
            code.getField(self, part.getName(), type);
            if (Adapting.isPrimitive(type)) {
                code.invokeStatic(Adapting.boxed(type), new Method("hashCode", Type.INT_TYPE, new Type[] {type}));
            } else {
                code.invokeStatic(OBJECTS, HASH);
            }
            code.math(GeneratorAdapter.ADD, Type.INT_TYPE);
        }
        code.returnValue();
        code.endMethod();
    }
}
