package buildup.packing;

import java.util.Map;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;

/** A value of one type becomes one of another, as where a method is called: boxed, unboxed, widened or cast. */
final class Adapting {
    private static final Map<Type, Type> UNBOXED = Map.of(
            Type.getType(Boolean.class), Type.BOOLEAN_TYPE,
            Type.getType(Character.class), Type.CHAR_TYPE,
            Type.getType(Byte.class), Type.BYTE_TYPE,
            Type.getType(Short.class), Type.SHORT_TYPE,
            Type.getType(Integer.class), Type.INT_TYPE,
            Type.getType(Long.class), Type.LONG_TYPE,
            Type.getType(Float.class), Type.FLOAT_TYPE,
            Type.getType(Double.class), Type.DOUBLE_TYPE);

    private Adapting() {}

    /** Adds what makes the value on top of the stack one of another type; where that is none, the value goes. */
    static void adapt(GeneratorAdapter code, Type from, Type to) {
        if (from.equals(to)) {
            return;
        }
        if (to.getSort() == Type.VOID) {
            drop(code, from);
        } else if (isPrimitive(from) && isPrimitive(to)) {
            code.cast(from, to);
        } else if (isPrimitive(from)) {
            code.valueOf(from);
        } else if (isPrimitive(to)) {
            Type unboxed = UNBOXED.getOrDefault(from, to);
            code.unbox(unboxed);
            code.cast(unboxed, to);
        } else {
            code.checkCast(to);
        }
    }

    private static void drop(GeneratorAdapter code, Type type) {
        if (type.getSize() == 2) {
            code.pop2();
        } else {
            code.pop();
        }
    }

    /** The class that holds values of a primitive type. */
    static Type boxed(Type primitive) {
        return UNBOXED.entrySet().stream()
                .filter(one -> one.getValue().equals(primitive))
                .findFirst()
                .orElseThrow()
                .getKey();
    }

    /** Whether values of a type are no objects. */
    static boolean isPrimitive(Type type) {
        return type.getSort() < Type.ARRAY;
    }
}
