package hullalmanac.app;

import hullalmanac.core.record.Coded;
import hullalmanac.present.Look;
import hullalmanac.present.shell.WindowLook;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Remembers how the window was left in a small file; one that cannot be read or written costs
 * nothing.
 */
record FileWindowMemory(Path file) {
  private static final Logger LOG = Logger.getLogger(FileWindowMemory.class.getName());

  /** How the window was left, where that is known. */
  Optional<WindowLook> recall() {
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    Properties p = new Properties();
    try (Reader in = Files.newBufferedReader(file)) {
      p.load(in);
      return Optional.of(
          new WindowLook(
              whole(p, "x"),
              whole(p, "y"),
              whole(p, "width"),
              whole(p, "height"),
              Boolean.parseBoolean(p.getProperty("maximised")),
              look(p),
              TableLines.read(p)));
    } catch (IOException | IllegalArgumentException e) {
      LOG.log(Level.INFO, "the window's place was not remembered", e);
      return Optional.empty();
    }
  }

  private static Look look(Properties p) {
    return new Look(
        Coded.parse(Look.Tint.class, p.getProperty("tint", "light")).orElse(Look.Tint.LIGHT),
        Float.parseFloat(p.getProperty("zoom", "1")),
        Boolean.parseBoolean(p.getProperty("wetHands")),
        Boolean.parseBoolean(p.getProperty("calm")));
  }

  private static int whole(Properties p, String name) {
    return Integer.parseInt(p.getProperty(name, ""));
  }

  /** Notes how the window is left. */
  void keep(WindowLook look) {
    Properties p = new Properties();
    p.setProperty("x", String.valueOf(look.x()));
    p.setProperty("y", String.valueOf(look.y()));
    p.setProperty("width", String.valueOf(look.width()));
    p.setProperty("height", String.valueOf(look.height()));
    p.setProperty("maximised", String.valueOf(look.maximised()));
    p.setProperty("tint", look.look().tint().code());
    p.setProperty("zoom", String.valueOf(look.look().zoom()));
    p.setProperty("wetHands", String.valueOf(look.look().wetHands()));
    p.setProperty("calm", String.valueOf(look.look().calm()));
    TableLines.write(look.tables(), p);
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      try (Writer out = Files.newBufferedWriter(file)) {
        p.store(out, "How the window was left");
      }
    } catch (IOException e) {
      LOG.log(Level.INFO, "the window's place is not remembered", e);
    }
  }
}
