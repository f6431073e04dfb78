package dev.placket.demo.jar;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * The class of one lambda: what it captures as fields, and one method that calls its body.
 *
 * @param name its own name
 * @param host the class whose nest it is in
 * @param method the one method of the interface
 * @param factory what is captured, to the interface
 * @param erased the interface's method with its types erased
 * @param body what is called
 * @param exact the interface's method with the types that are meant
 */
record LambdaClass(
    String name, String host, String method, String factory, Type erased, Handle body, Type exact) {
  private static final String OBJECT = "java/lang/Object";
  private static final String NEW = "<init>";
  private static final String OF = "of";
  private static final String ONLY = "ONLY";

  /** Puts one on the stack, in place of what it captures. */
  void use(MethodVisitor to) {
    if (captured().length == 0) {
      to.visitFieldInsn(Opcodes.GETSTATIC, name, ONLY, made().getDescriptor());
    } else {
      to.visitMethodInsn(Opcodes.INVOKESTATIC, name, OF, factory, false);
    }
  }

  /** Its class file. */
  byte[] bytes() {
    ClassWriter out = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    int access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
    String[] interfaces = {made().getInternalName()};
    out.visit(Opcodes.V17, access, name, null, OBJECT, interfaces);
    out.visitNestHost(host);
    constructor(out);
    factory(out);
    call(out);
    out.visitEnd();
    return out.toByteArray();
  }

  private Type[] captured() {
    return Type.getArgumentTypes(factory);
  }

  private Type made() {
    return Type.getReturnType(factory);
  }

  private String constructorType() {
    return Type.getMethodDescriptor(Type.VOID_TYPE, captured());
  }

  private static String field(int i) {
    return "captured" + i;
  }

  private void constructor(ClassWriter out) {
    MethodVisitor m = out.visitMethod(Opcodes.ACC_PRIVATE, NEW, constructorType(), null, null);
    m.visitVarInsn(Opcodes.ALOAD, 0);
    m.visitMethodInsn(Opcodes.INVOKESPECIAL, OBJECT, NEW, "()V", false);
    int at = 1;
    for (int i = 0; i < captured().length; i++) {
      Type type = captured()[i];
      int access = Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL;
      out.visitField(access, field(i), type.getDescriptor(), null, null);
      m.visitVarInsn(Opcodes.ALOAD, 0);
      m.visitVarInsn(type.getOpcode(Opcodes.ILOAD), at);
      m.visitFieldInsn(Opcodes.PUTFIELD, name, field(i), type.getDescriptor());
      at += type.getSize();
    }
    end(m, Opcodes.RETURN);
  }

  /** Where nothing is captured, one object serves for all calls, as it would at run time. */
  private void factory(ClassWriter out) {
    boolean only = captured().length == 0;
    MethodVisitor m =
        out.visitMethod(
            Opcodes.ACC_STATIC, only ? "<clinit>" : OF, only ? "()V" : factory, null, null);
    m.visitTypeInsn(Opcodes.NEW, name);
    m.visitInsn(Opcodes.DUP);
    int at = 0;
    for (Type type : captured()) {
      m.visitVarInsn(type.getOpcode(Opcodes.ILOAD), at);
      at += type.getSize();
    }
    m.visitMethodInsn(Opcodes.INVOKESPECIAL, name, NEW, constructorType(), false);
    if (only) {
      int access = Opcodes.ACC_STATIC | Opcodes.ACC_FINAL;
      out.visitField(access, ONLY, made().getDescriptor(), null, null);
      m.visitFieldInsn(Opcodes.PUTSTATIC, name, ONLY, made().getDescriptor());
    }
    end(m, only ? Opcodes.RETURN : Opcodes.ARETURN);
  }

  private void call(ClassWriter out) {
    MethodVisitor m =
        out.visitMethod(Opcodes.ACC_PUBLIC, method, erased.getDescriptor(), null, null);
    if (makes()) {
      m.visitTypeInsn(Opcodes.NEW, body.getOwner());
      m.visitInsn(Opcodes.DUP);
    }
    arguments(m);
    boolean ofInterface = body.isInterface();
    m.visitMethodInsn(opcode(), body.getOwner(), body.getName(), body.getDesc(), ofInterface);
    new Conversion(m).from(returned()).to(erased.getReturnType());
    end(m, erased.getReturnType().getOpcode(Opcodes.IRETURN));
  }

  /** First what was captured, then what the call brings, each as the body wants it. */
  private void arguments(MethodVisitor m) {
    Conversion convert = new Conversion(m);
    Iterator<Type> wanted = wanted().iterator();
    for (int i = 0; i < captured().length; i++) {
      m.visitVarInsn(Opcodes.ALOAD, 0);
      m.visitFieldInsn(Opcodes.GETFIELD, name, field(i), captured()[i].getDescriptor());
      convert.from(captured()[i]).to(wanted.next());
    }
    Type[] meant = exact.getArgumentTypes();
    int at = 1;
    for (int i = 0; i < meant.length; i++) {
      Type given = erased.getArgumentTypes()[i];
      m.visitVarInsn(given.getOpcode(Opcodes.ILOAD), at);
      convert.from(given).to(meant[i]);
      convert.from(meant[i]).to(wanted.next());
      at += given.getSize();
    }
  }

  private boolean makes() {
    return body.getTag() == Opcodes.H_NEWINVOKESPECIAL;
  }

  private Type returned() {
    return makes() ? Type.getObjectType(body.getOwner()) : Type.getReturnType(body.getDesc());
  }

  /** What the body takes, with what it is called on first. */
  private List<Type> wanted() {
    List<Type> wanted = new ArrayList<>();
    if (body.getTag() != Opcodes.H_INVOKESTATIC && !makes()) {
      wanted.add(Type.getObjectType(body.getOwner()));
    }
    wanted.addAll(List.of(Type.getArgumentTypes(body.getDesc())));
    return wanted;
  }

  /** What is private to a member of the nest is called as anything else is. */
  private int opcode() {
    return switch (body.getTag()) {
      case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
      case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
      default -> body.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
    };
  }

  private static void end(MethodVisitor m, int opcode) {
    m.visitInsn(opcode);
    m.visitMaxs(0, 0);
    m.visitEnd();
  }
}
