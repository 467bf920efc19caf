package hullalmanac.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/** Brings a database up to date, step by step, each step in one transaction. */
final class Migrator {
  private Migrator() {}

  /**
   * Runs the steps after one that has been run.
   *
   * @param done number of the last step that has been run, 0 for a new file
   */
  static void run(Connection connection, List<SchemaStep> steps, int done) throws SQLException {
    connection.setAutoCommit(false);
    try (Statement statement = connection.createStatement()) {
      for (SchemaStep step : steps) {
        if (step.number() > done) {
          for (String sql : step.statements()) {
            statement.execute(sql);
          }
          statement.execute("PRAGMA application_id = " + Header.APPLICATION_ID);
          statement.execute("PRAGMA user_version = " + step.number());
          connection.commit();
        }
      }
    } catch (SQLException | RuntimeException | Error e) {
      connection.rollback();
      throw e;
    } finally {
      connection.setAutoCommit(true);
    }
  }
}
