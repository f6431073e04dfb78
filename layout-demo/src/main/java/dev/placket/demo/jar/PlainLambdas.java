package dev.placket.demo.jar;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * A class file with its lambdas and method references as classes of their own, in the same nest.
 *
 * <p>What {@code LambdaMetafactory.metafactory} would make at run time is made here; those that ask
 * for more, as to be written out, stay.
 */
final class PlainLambdas {
  private final Map<String, byte[]> made = new LinkedHashMap<>();
  private final ClassReader reader;
  private final byte[] bytes;
  private String host;

  /** Of a class file. */
  PlainLambdas(byte[] file) {
    reader = new ClassReader(file);
    host = reader.getClassName();
    ClassWriter writer = new ClassWriter(0);
    reader.accept(new Hosts(), ClassReader.SKIP_CODE);
    reader.accept(new Classes(writer), 0);
    bytes = writer.toByteArray();
  }

  /** The class file, changed. */
  byte[] bytes() {
    return bytes.clone();
  }

  /** The class files made, by their names; empty if it had no lambdas. */
  Map<String, byte[]> made() {
    return made;
  }

  /** The class whose nest they are in. */
  String host() {
    return host;
  }

  private static boolean isPlain(Handle bootstrap) {
    return bootstrap.getOwner().equals("java/lang/invoke/LambdaMetafactory")
        && bootstrap.getName().equals("metafactory");
  }

  private final class Hosts extends ClassVisitor {
    Hosts() {
      super(Opcodes.ASM9);
    }

    @Override
    public void visitNestHost(String name) {
      host = name;
    }
  }

  private final class Classes extends ClassVisitor {
    Classes(ClassVisitor to) {
      super(Opcodes.ASM9, to);
    }

    @Override
    public MethodVisitor visitMethod(
        int access,
        String name,
        String type,
        @Nullable String generic,
        String @Nullable [] thrown) {
      return new Calls(super.visitMethod(access, name, type, generic, thrown));
    }
  }

  private final class Calls extends MethodVisitor {
    Calls(MethodVisitor to) {
      super(Opcodes.ASM9, to);
    }

    @Override
    public void visitInvokeDynamicInsn(String name, String type, Handle by, Object... with) {
      if (!isPlain(by)) {
        super.visitInvokeDynamicInsn(name, type, by, with);
        return;
      }
      String owner = reader.getClassName() + "$Lambda" + (made.size() + 1);
      LambdaClass lambda =
          new LambdaClass(
              owner, host, name, type, (Type) with[0], (Handle) with[1], (Type) with[2]);
      made.put(owner, lambda.bytes());
      lambda.use(mv);
    }
  }
}
