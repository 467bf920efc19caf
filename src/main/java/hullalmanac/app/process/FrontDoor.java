package hullalmanac.app.process;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * A door on this computer's loopback address at which a second start knocks, so that the first
 * window comes to the front instead of a second program opening the same record. Nothing but that
 * can be asked for, and nothing outside this computer can reach it.
 */
public final class FrontDoor implements AutoCloseable {
  private static final Logger LOG = Logger.getLogger(FrontDoor.class.getName());
  private static final String KNOCK = "hull-almanac: come to the front";
  private static final String ANSWER = "coming";
  private static final int PATIENCE_MS = 2000;

  private final ServerSocket socket;
  private final Runnable comeToFront;
  private final Thread answering;

  private FrontDoor(ServerSocket socket, Runnable comeToFront) {
    this.socket = socket;
    this.comeToFront = comeToFront;
    this.answering = new Thread(this::answer, "front-door");
    answering.setDaemon(true);
  }

  /**
   * Opens a door on a free port.
   *
   * @param comeToFront called on a thread of the door's own at each knock
   * @throws IOException when this computer has no loopback address or no free port
   */
  public static FrontDoor open(Runnable comeToFront) throws IOException {
    ServerSocket socket = new ServerSocket(0, 4, InetAddress.getLoopbackAddress());
    FrontDoor door = new FrontDoor(socket, comeToFront);
    door.answering.start();
    return door;
  }

  /** The port on which the door listens. */
  public int port() {
    return socket.getLocalPort();
  }

  private void answer() {
    while (!socket.isClosed()) {
      try (Socket visitor = socket.accept()) {
        visitor.setSoTimeout(PATIENCE_MS);
        // A knock can still slip in while the door is being closed: nobody is at home then.
        if (!socket.isClosed() && KNOCK.equals(firstLine(visitor))) {
          comeToFront.run();
          visitor.getOutputStream().write((ANSWER + "\n").getBytes(StandardCharsets.UTF_8));
        }
      } catch (IOException e) {
        LOG.log(Level.FINE, "a knock at the door came to nothing", e);
      }
    }
  }

  /** Knocks at the door of a program that is already running; says whether it answered. */
  public static boolean knock(int port) {
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), PATIENCE_MS);
      socket.setSoTimeout(PATIENCE_MS);
      socket.getOutputStream().write((KNOCK + "\n").getBytes(StandardCharsets.UTF_8));
      return ANSWER.equals(firstLine(socket));
    } catch (IOException e) {
      LOG.log(Level.FINE, "nobody answered", e);
      return false;
    }
  }

  private static String firstLine(Socket socket) throws IOException {
    return new BufferedReader(
            new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8))
        .readLine();
  }

  /** Closes the door; once this returns, no knock is answered any more. */
  @Override
  public void close() throws IOException {
    socket.close();
    if (Thread.currentThread() != answering) {
      try {
        answering.join(PATIENCE_MS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
