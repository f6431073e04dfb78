package dev.placket.demo.jar;

import java.util.List;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/** Members of a nest (JVMS 4.7.28): classes that may use what is private to one another. */
final class Nest {
  private Nest() {}

  /** The host's class file, naming these members beside its own. */
  static byte[] with(List<String> members, byte[] host) {
    ClassReader reader = new ClassReader(host);
    ClassWriter writer = new ClassWriter(0);
    reader.accept(new ClassVisitor(Opcodes.ASM9, writer) {}, 0);
    members.forEach(writer::visitNestMember);
    return writer.toByteArray();
  }
}
