package dev.placket.demo.jar;

import java.util.Arrays;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Turns the value on the stack into another type, as {@code LambdaMetafactory} would. */
final class Conversion {
  private static final Type[] PRIMITIVES = {
    Type.BOOLEAN_TYPE,
    Type.CHAR_TYPE,
    Type.BYTE_TYPE,
    Type.SHORT_TYPE,
    Type.INT_TYPE,
    Type.FLOAT_TYPE,
    Type.LONG_TYPE,
    Type.DOUBLE_TYPE
  };
  private static final String[] BOXES = {
    "java/lang/Boolean",
    "java/lang/Character",
    "java/lang/Byte",
    "java/lang/Short",
    "java/lang/Integer",
    "java/lang/Float",
    "java/lang/Long",
    "java/lang/Double"
  };

  private final MethodVisitor out;
  private Type given = Type.VOID_TYPE;

  Conversion(MethodVisitor out) {
    this.out = out;
  }

  /** The type of the value on the stack. */
  Conversion from(Type type) {
    given = type;
    return this;
  }

  /** Turns it into this type. */
  void to(Type wanted) {
    if (given.equals(wanted)) {
      return;
    }
    if (wanted.getSort() == Type.VOID) {
      out.visitInsn(given.getSize() == 2 ? Opcodes.POP2 : Opcodes.POP);
    } else if (!isPrimitive(given) && !isPrimitive(wanted)) {
      out.visitTypeInsn(Opcodes.CHECKCAST, wanted.getInternalName());
    } else if (isPrimitive(given) && isPrimitive(wanted)) {
      widen(given, wanted);
    } else if (isPrimitive(given)) {
      box(wanted);
    } else {
      unbox(wanted);
    }
  }

  private static boolean isPrimitive(Type type) {
    return type.getSort() <= Type.DOUBLE;
  }

  private void box(Type wanted) {
    String box = BOXES[given.getSort() - 1];
    String type = Type.getMethodDescriptor(Type.getObjectType(box), given);
    out.visitMethodInsn(Opcodes.INVOKESTATIC, box, "valueOf", type, false);
    from(Type.getObjectType(box)).to(wanted);
  }

  /** From its own box, widened after; an object of whatever type is the box of what is wanted. */
  private void unbox(Type wanted) {
    int which = Arrays.asList(BOXES).indexOf(given.getInternalName());
    if (which < 0) {
      which = wanted.getSort() - 1;
      out.visitTypeInsn(Opcodes.CHECKCAST, BOXES[which]);
    }
    Type primitive = PRIMITIVES[which];
    String type = Type.getMethodDescriptor(primitive);
    String name = primitive.getClassName() + "Value";
    out.visitMethodInsn(Opcodes.INVOKEVIRTUAL, BOXES[which], name, type, false);
    from(primitive).to(wanted);
  }

  /** JLS 5.1.2; what is smaller than an int is one on the stack already. */
  private void widen(Type from, Type wanted) {
    int sort = from.getSort();
    int opcode =
        switch (wanted.getSort()) {
          case Type.LONG -> sort == Type.LONG ? Opcodes.NOP : Opcodes.I2L;
          case Type.FLOAT -> sort == Type.LONG ? Opcodes.L2F : Opcodes.I2F;
          case Type.DOUBLE ->
              sort == Type.LONG ? Opcodes.L2D : sort == Type.FLOAT ? Opcodes.F2D : Opcodes.I2D;
          default -> Opcodes.NOP;
        };
    if (opcode != Opcodes.NOP) {
      out.visitInsn(opcode);
    }
  }
}
