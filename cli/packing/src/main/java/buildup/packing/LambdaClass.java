package buildup.packing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;

/**
 * The class of one lambda: what it took from around it are its fields, and its one method calls what the lambda calls. What
 * the three types of a site mean stands in the Java API, {@code java.lang.invoke.LambdaMetafactory}.
 */
final class LambdaClass {
    /** The field that holds the one instance of a lambda that takes nothing from around it. */
    static final String ONE = "ONE";

    /** The method that makes an instance of a lambda from what it takes. */
    static final String OF = "of";

    private static final Method NEW = Method.getMethod("void <init> ()");
    private static final Type OBJECT = Type.getType(Object.class);

    private final Type self;
    private final ClassNode home;
    private final InvokeDynamicInsnNode site;
    private final Type[] taken;
    private final Method make;
    private final ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);

    /**
     * @param name its internal name
     * @param home the class where the lambda is written
     * @param site where it is made there
     */
    LambdaClass(String name, ClassNode home, InvokeDynamicInsnNode site) {
        this.self = Type.getObjectType(name);
        this.home = home;
        this.site = site;
        this.taken = Type.getArgumentTypes(site.desc);
        this.make = new Method("<init>", Type.VOID_TYPE, taken);
    }

    /** As the JVM reads it. */
    byte[] written() {
        String[] interfaces = {Type.getReturnType(site.desc).getInternalName()};
        int access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
        writer.visit(home.version, access, self.getInternalName(), null, OBJECT.getInternalName(), interfaces);
        writer.visitSource(home.sourceFile, null);
        writer.visitNestHost(home.nestHostClass == null ? home.name : home.nestHostClass);
        constructor();
        if (taken.length == 0) {
            one();
        } else {
            of();
        }
        call();
        writer.visitEnd();
        return writer.toByteArray();
    }

    private void constructor() {
        GeneratorAdapter code = method(Opcodes.ACC_PRIVATE, make);
        code.loadThis();
        code.invokeConstructor(OBJECT, NEW);
        for (int i = 0; i < taken.length; i++) {
            int access = Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL;
            writer.visitField(access, field(i), taken[i].getDescriptor(), null, null);
            code.loadThis();
            code.loadArg(i);
            code.putField(self, field(i), taken[i]);
        }
        code.returnValue();
        code.endMethod();
    }

    private void one() {
        writer.visitField(Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, ONE, self.getDescriptor(), null, null);
        GeneratorAdapter code = method(Opcodes.ACC_STATIC, Method.getMethod("void <clinit> ()"));
        code.newInstance(self);
        code.dup();
        code.invokeConstructor(self, make);
        code.putStatic(self, ONE, self);
        code.returnValue();
        code.endMethod();
    }

    private void of() {
        GeneratorAdapter code = method(Opcodes.ACC_STATIC, new Method(OF, site.desc));
        code.newInstance(self);
        code.dup();
        code.loadArgs();
        code.invokeConstructor(self, make);
        code.returnValue();
        code.endMethod();
    }

    /** The method of the interface, as it is erased there, with the types that it has at this site. */
    private void call() {
        Type erased = (Type) site.bsmArgs[0];
        Handle called = (Handle) site.bsmArgs[1];
        Type here = (Type) site.bsmArgs[2];
        GeneratorAdapter code = method(Opcodes.ACC_PUBLIC, new Method(site.name, erased.getDescriptor()));
        boolean creates = called.getTag() == Opcodes.H_NEWINVOKESPECIAL;
        Type owner = Type.getObjectType(called.getOwner());
        if (creates) {
            code.newInstance(owner);
            code.dup();
        }
        Iterator<Type> wanted = wanted(called, owner).iterator();
        for (int i = 0; i < taken.length; i++) {
            code.loadThis();
            code.getField(self, field(i), taken[i]);
            Adapting.adapt(code, taken[i], wanted.next());
        }
        for (int i = 0; i < erased.getArgumentTypes().length; i++) {
            code.loadArg(i);
            Adapting.adapt(code, erased.getArgumentTypes()[i], here.getArgumentTypes()[i]);
            Adapting.adapt(code, here.getArgumentTypes()[i], wanted.next());
        }
        code.visitMethodInsn(
                operation(called), called.getOwner(), called.getName(), called.getDesc(), called.isInterface());
        Type given = creates ? owner : Type.getReturnType(called.getDesc());
        Adapting.adapt(code, given, here.getReturnType());
        Adapting.adapt(code, here.getReturnType(), erased.getReturnType());
        code.returnValue();
        code.endMethod();
    }

    /** What the called method takes: the object that it is called on, where there is one, and its arguments. */
    private static List<Type> wanted(Handle called, Type owner) {
        List<Type> wanted = new ArrayList<>();
        if (called.getTag() != Opcodes.H_INVOKESTATIC && called.getTag() != Opcodes.H_NEWINVOKESPECIAL) {
            wanted.add(owner);
        }
        Collections.addAll(wanted, Type.getArgumentTypes(called.getDesc()));
        return wanted;
    }

    /** A private method of the same nest is called like any other. */
    private static int operation(Handle called) {
        return switch (called.getTag()) {
            case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
            case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
            default -> called.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
        };
    }

    private GeneratorAdapter method(int access, Method method) {
        GeneratorAdapter code = new GeneratorAdapter(
                writer.visitMethod(access, method.getName(), method.getDescriptor(), null, null),
                access,
                method.getName(),
                method.getDescriptor());
        code.visitCode();
        return code;
    }

    private static String field(int i) {
        return "taken" + i;
    }
}
