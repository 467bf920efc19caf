package hullalmanac.app.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class FrontDoorTest {
  @Test
  void comesToTheFrontAtEachKnock() throws Exception {
    AtomicInteger came = new AtomicInteger();
    try (FrontDoor door = FrontDoor.open(came::incrementAndGet)) {
      assertThat(FrontDoor.knock(door.port())).isTrue();
      assertThat(FrontDoor.knock(door.port())).isTrue();
    }
    assertThat(came).hasValue(2);
  }

  @Test
  void answersNothingElse() throws Exception {
    AtomicInteger came = new AtomicInteger();
    try (FrontDoor door = FrontDoor.open(came::incrementAndGet);
        Socket stranger = new Socket(InetAddress.getLoopbackAddress(), door.port())) {
      stranger.getOutputStream().write("GET / HTTP/1.1\r\n\r\n".getBytes(StandardCharsets.UTF_8));
      assertThat(stranger.getInputStream().read()).isEqualTo(-1);
    }
    assertThat(came).hasValue(0);
  }

  @Test
  void saysSoWhenNobodyAnswers() throws Exception {
    int port;
    try (FrontDoor door = FrontDoor.open(() -> {})) {
      port = door.port();
    }
    assertThat(FrontDoor.knock(port)).isFalse();
  }
}
