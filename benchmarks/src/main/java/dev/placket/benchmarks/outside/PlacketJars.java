package dev.placket.benchmarks.outside;

import dev.placket.benchmarks.pages.PageException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** The command placket, run in this process by classes of its own jars. */
public final class PlacketJars {
  /** Exit code of a run that threw or did not end; the command's own for an internal error. */
  public static final int CRASHED = 1;

  private final Method run;

  /**
   * Opens the jars for as long as this process runs.
   *
   * @throws PageException if they hold no such command
   */
  public PlacketJars(List<Path> jars) {
    try {
      System.setProperty("java.awt.headless", "true");
      URL[] at = new URL[jars.size()];
      for (int i = 0; i < at.length; i++) {
        at[i] = jars.get(i).toUri().toURL();
      }
      ClassLoader classes = new URLClassLoader(at, ClassLoader.getPlatformClassLoader());
      run =
          classes
              .loadClass("dev.placket.demo.Main")
              .getMethod("run", String[].class, PrintStream.class, PrintStream.class);
    } catch (IOException | ReflectiveOperationException e) {
      throw new PageException(jars + ": are not the command placket (" + e + ")");
    }
  }

  /**
   * How a run ended.
   *
   * @param code its exit code
   * @param seconds wall time
   * @param said all that it printed
   */
  public record Ended(int code, double seconds, String said) {}

  /** Runs it; one that takes longer than the limit is left behind. */
  public Ended run(int limitSeconds, String... arguments) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream to = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    FutureTask<Integer> task = new FutureTask<>(() -> code(arguments, to));
    Thread thread = new Thread(task, "placket");
    thread.setContextClassLoader(run.getDeclaringClass().getClassLoader());
    thread.setDaemon(true);
    long start = System.nanoTime();
    thread.start();
    int code = CRASHED;
    try {
      code = task.get(limitSeconds, TimeUnit.SECONDS);
    } catch (TimeoutException e) {
      to.println("did not end within " + limitSeconds + " s");
    } catch (ExecutionException e) {
      to.println("threw " + e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    return new Ended(code, seconds, bytes.toString(StandardCharsets.UTF_8));
  }

  private int code(String[] arguments, PrintStream to) throws Exception {
    try {
      return (int) run.invoke(null, arguments, to, to);
    } catch (InvocationTargetException e) {
      throw new IllegalStateException(String.valueOf(e.getCause()), e.getCause());
    }
  }
}
