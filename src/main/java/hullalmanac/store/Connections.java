package hullalmanac.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteOpenMode;

/** Opens connections with the settings that a record needs. */
final class Connections {
  private static final int PATIENCE_MS = 5000;

  private Connections() {}

  /** Opens a file that is there for reading. */
  static Connection readOnly(Path file) throws SQLException {
    SQLiteConfig config = common();
    config.setReadOnly(true);
    return open(file, config);
  }

  /** Opens a file that is there for reading and writing. */
  static Connection writing(Path file) throws SQLException {
    return open(file, writingConfig());
  }

  /** Makes a new file. */
  static Connection creating(Path file) throws SQLException {
    SQLiteConfig config = writingConfig();
    config.setOpenMode(SQLiteOpenMode.CREATE);
    return open(file, config);
  }

  private static SQLiteConfig writingConfig() {
    SQLiteConfig config = common();
    config.setJournalMode(SQLiteConfig.JournalMode.DELETE);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
    return config;
  }

  private static SQLiteConfig common() {
    SQLiteConfig config = new SQLiteConfig();
    config.resetOpenMode(SQLiteOpenMode.CREATE);
    config.enforceForeignKeys(true);
    config.setBusyTimeout(PATIENCE_MS);
    return config;
  }

  private static Connection open(Path file, SQLiteConfig config) throws SQLException {
    Connection connection =
        DriverManager.getConnection("jdbc:sqlite:" + file, config.toProperties());
    try (Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA trusted_schema = OFF");
      statement.execute("PRAGMA cell_size_check = ON");
    } catch (SQLException e) {
      connection.close();
      throw e;
    }
    return connection;
  }
}
