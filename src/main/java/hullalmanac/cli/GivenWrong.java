package hullalmanac.cli;

import java.util.List;

/** Something given is wrong; ends the command with exit code 1 and its lines on standard error. */
final class GivenWrong extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<String> lines;

  GivenWrong(List<String> lines) {
    super(String.join("\n", lines));
    this.lines = List.copyOf(lines);
  }

  GivenWrong(String line) {
    this(List.of(line));
  }

  List<String> lines() {
    return lines;
  }
}
