package hullalmanac.ui.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordingFile;

/**
 * Records which files the event thread reads and writes, by the events of the Java virtual machine
 * itself. Class files, fonts (which Java unpacks under names with +~JF), the system's own files and
 * the program's resources are left out.
 */
final class FilesOnEventThread implements AutoCloseable {
  private static final List<String> EVENTS =
      List.of("jdk.FileRead", "jdk.FileWrite", "jdk.FileForce");

  private final Recording recording = new Recording();

  FilesOnEventThread() {
    EVENTS.forEach(event -> recording.enable(event).withoutThreshold().withStackTrace());
    recording.start();
  }

  /** Stops, and names the files touched. */
  List<String> touched() throws IOException {
    recording.stop();
    Path file = Files.createTempFile("event-thread", ".jfr");
    try {
      recording.dump(file);
      return RecordingFile.readAllEvents(file).stream()
          .filter(e -> EVENTS.contains(e.getEventType().getName()))
          .filter(e -> e.getThread() != null && e.getThread().getJavaName() != null)
          .filter(e -> e.getThread().getJavaName().startsWith("AWT-EventQueue"))
          .map(FilesOnEventThread::path)
          .filter(FilesOnEventThread::ofARecord)
          .distinct()
          .toList();
    } finally {
      Files.deleteIfExists(file);
    }
  }

  private static String path(RecordedEvent event) {
    return String.valueOf(event.getString("path"));
  }

  private static boolean ofARecord(String path) {
    return !path.startsWith(System.getProperty("java.home"))
        && !path.contains("/target/classes/")
        && !path.matches("/(dev|etc|proc|sys)/.*")
        && !path.contains("+~JF")
        && !path.matches(".*(\\.jar|\\.class|\\.ttf|\\.otf|\\.pfb|\\.so|\\.properties)");
  }

  @Override
  public void close() {
    recording.close();
  }
}
