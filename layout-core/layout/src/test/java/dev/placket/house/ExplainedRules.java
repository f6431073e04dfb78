package dev.placket.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/**
 * Every public type and method says what it is, every record names its components, and every
 * package says what lives there.
 */
public abstract class ExplainedRules {
  /** The library under test. */
  protected abstract Library library();

  @Test
  void everythingPublicIsExplained() throws IOException {
    Scan scan = scan(library().sources());
    assertTrue(scan.types > 10, "the scan finds the sources: " + scan.types);
    assertEquals(List.of(), scan.silent);
  }

  private static Scan scan(Path sources) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    List<Path> files;
    try (Stream<Path> all = Files.walk(sources)) {
      files =
          all.filter(f -> f.toString().endsWith(".java"))
              .filter(f -> !f.endsWith("module-info.java"))
              .sorted()
              .toList();
    }
    try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(files));
      Scan scan = new Scan(DocTrees.instance(task));
      for (CompilationUnitTree unit : task.parse()) {
        scan.scan(unit, null);
      }
      return scan;
    }
  }

  /** Collects what is public and says nothing. */
  private static final class Scan extends TreePathScanner<Void, Void> {
    final List<String> silent = new ArrayList<>();
    int types;
    private final DocTrees docs;

    Scan(DocTrees docs) {
      this.docs = docs;
    }

    @Override
    public Void visitClass(ClassTree type, Void unused) {
      if (!isPublic(type.getModifiers().getFlags())) {
        return null;
      }
      types++;
      DocCommentTree comment = comment(type.getSimpleName());
      if (comment != null && type.getKind() == Tree.Kind.RECORD) {
        checkComponents(type, comment);
      }
      return super.visitClass(type, unused);
    }

    @Override
    public Void visitMethod(MethodTree method, Void unused) {
      boolean overrides =
          method.getModifiers().getAnnotations().stream()
              .anyMatch(a -> a.getAnnotationType().toString().equals("Override"));
      if (isPublic(method.getModifiers().getFlags()) && !overrides) {
        comment(method.getName());
      }
      return null;
    }

    /** Members of a public interface are public without saying so. */
    private boolean isPublic(Set<Modifier> flags) {
      TreePath above = getCurrentPath().getParentPath();
      boolean inInterface = above != null && above.getLeaf().getKind() == Tree.Kind.INTERFACE;
      return flags.contains(Modifier.PUBLIC) || (inInterface && !flags.contains(Modifier.PRIVATE));
    }

    private DocCommentTree comment(CharSequence name) {
      DocCommentTree comment = docs.getDocCommentTree(getCurrentPath());
      if (comment == null || comment.getFirstSentence().isEmpty()) {
        silent.add(where() + " " + name);
      }
      return comment;
    }

    private void checkComponents(ClassTree record, DocCommentTree comment) {
      List<String> named =
          comment.getBlockTags().stream()
              .filter(t -> t.getKind() == DocTree.Kind.PARAM)
              .map(t -> ((ParamTree) t).getName().toString())
              .toList();
      for (Tree member : record.getMembers()) {
        if (member instanceof VariableTree v
            && !v.getModifiers().getFlags().contains(Modifier.STATIC)
            && !named.contains(v.getName().toString())) {
          silent.add(where() + " " + record.getSimpleName() + "." + v.getName());
        }
      }
    }

    private String where() {
      return Path.of(getCurrentPath().getCompilationUnit().getSourceFile().getName())
          .getFileName()
          .toString();
    }
  }
}
