package hullalmanac.app;

/** Reads the arguments and builds the program. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.out.println("stub");
  }
}
