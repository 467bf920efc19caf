package hullalmanac.app.process;

/** Does something on a thread of its own, for which no lane is open yet. */
public final class Aside {
  private Aside() {}

  /** Does it; the program stays open until it is done. */
  public static void run(String name, Runnable work) {
    new Thread(work, name).start();
  }
}
