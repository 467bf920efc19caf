package hullalmanac.ui.window;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordedFrame;
import jdk.jfr.consumer.RecordingFile;

/**
 * Records which files the event thread touches, and each call of SQLite on it: what is asked,
 * opened and changed by {@link CallsOnEventThread}, what is read and written by the events of the
 * Java virtual machine itself. What Java itself does for classes and fonts is left out, and so are
 * the program's own classes and resources.
 */
final class FilesOnEventThread implements AutoCloseable {
  private static final List<String> EVENTS =
      List.of("jdk.FileRead", "jdk.FileWrite", "jdk.FileForce");

  /** Beginnings of the paths of Java, of the program and of its libraries. */
  private static final List<String> OWN =
      Stream.concat(
              Stream.of(System.getProperty("java.home"), "/dev/", "/proc/", "/sys/"),
              Stream.of("java.class.path", "surefire.test.class.path")
                  .flatMap(
                      name -> Stream.of(System.getProperty(name, "").split(File.pathSeparator)))
                  .filter(part -> !part.isEmpty())
                  .flatMap(FilesOnEventThread::withLibraries))
          .toList();

  /** A part of the class path, and where a packed program names its libraries. */
  private static Stream<String> withLibraries(String part) {
    Path path = Path.of(part).toAbsolutePath();
    return part.endsWith(".jar")
        ? Stream.of(path.toString(), path.resolveSibling("lib").toString())
        : Stream.of(path.toString());
  }

  private final Recording recording = new Recording();
  private final CallsOnEventThread calls = new CallsOnEventThread();

  /**
   * A file touched, or a call of SQLite.
   *
   * @param how the method or event
   * @param files empty where that is not known
   * @param callers nearest first, each as its class and method
   */
  private record Touch(String how, List<String> files, List<String> callers) {
    boolean counts() {
      boolean own = !files.isEmpty() && files.stream().allMatch(FilesOnEventThread::isOwn);
      return !own && !ofPacked() && callers.stream().noneMatch(FilesOnEventThread::isJavas);
    }

    /**
     * A read of a packed file whose name the virtual machine does not know; its opening is seen.
     */
    private boolean ofPacked() {
      return files.equals(List.of("null"))
          && callers.stream().anyMatch(c -> c.startsWith("java.util.zip.ZipFile"));
    }

    String words() {
      String from =
          callers.stream()
              .filter(c -> c.startsWith("hullalmanac."))
              .findFirst()
              .orElseGet(() -> String.join(" < ", callers));
      return how + " " + files + " from " + from;
    }
  }

  FilesOnEventThread() throws IOException {
    EVENTS.forEach(event -> recording.enable(event).withoutThreshold().withStackTrace());
    recording.start();
  }

  /** What was touched, and from where in the program. */
  List<String> touched() throws IOException {
    recording.stop();
    return Stream.concat(calls.calls().stream().map(FilesOnEventThread::touch), events().stream())
        .filter(Touch::counts)
        .map(Touch::words)
        .distinct()
        .toList();
  }

  private static Touch touch(CallsOnEventThread.Call call) {
    return new Touch(
        call.method(), call.files(), call.from().stream().map(FilesOnEventThread::frame).toList());
  }

  private static String frame(StackTraceElement f) {
    return f.getClassName() + "." + f.getMethodName() + ":" + f.getLineNumber();
  }

  private List<Touch> events() throws IOException {
    Path file = Files.createTempFile("event-thread", ".jfr");
    try {
      recording.dump(file);
      return RecordingFile.readAllEvents(file).stream()
          .filter(e -> EVENTS.contains(e.getEventType().getName()))
          .filter(e -> e.getThread() != null && e.getThread().getJavaName() != null)
          .filter(e -> e.getThread().getJavaName().startsWith("AWT-EventQueue"))
          .map(FilesOnEventThread::touch)
          .toList();
    } finally {
      Files.deleteIfExists(file);
    }
  }

  private static Touch touch(RecordedEvent event) {
    List<String> callers =
        event.getStackTrace() == null
            ? List.of()
            : event.getStackTrace().getFrames().stream().map(FilesOnEventThread::frame).toList();
    return new Touch(
        event.getEventType().getName(), List.of(String.valueOf(event.getString("path"))), callers);
  }

  private static String frame(RecordedFrame f) {
    return f.getMethod().getType().getName()
        + "."
        + f.getMethod().getName()
        + ":"
        + f.getLineNumber();
  }

  private static boolean isOwn(String file) {
    return OWN.stream().anyMatch(file::startsWith);
  }

  /** Whether Java looks for a class or for the shape of a letter. */
  private static boolean isJavas(String caller) {
    return caller.startsWith("sun.font.")
        || caller.startsWith("java.awt.Font.createFont")
        || caller.startsWith("jdk.internal.loader.")
        || caller.startsWith("java.lang.ClassLoader.");
  }

  @Override
  public void close() {
    calls.stop();
    recording.close();
  }
}
