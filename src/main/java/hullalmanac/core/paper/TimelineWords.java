package hullalmanac.core.paper;

import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.report.BoatTimeline;
import hullalmanac.core.report.DateWords;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a chart of a boat over time says, for those who cannot see it. */
final class TimelineWords {
  private TimelineWords() {}

  static String of(BoatTimeline timeline) {
    return "Chart from "
        + DateWords.dated(timeline.from())
        + " to "
        + DateWords.dated(timeline.until())
        + ", a lane a surface. "
        + timeline.lanes().stream().map(TimelineWords::of).collect(Collectors.joining(" "));
  }

  private static String of(BoatTimeline.Lane lane) {
    List<String> parts = new ArrayList<>();
    if (!lane.coats().isEmpty()) {
      parts.add(
          "coats "
              + lane.coats().stream()
                  .map(c -> c.product() + " on " + DateWords.dated(c.day()))
                  .collect(Collectors.joining(", ")));
    }
    if (!lane.gloss().isEmpty()) {
      BoatTimeline.GlossDot last = lane.gloss().get(lane.gloss().size() - 1);
      parts.add(
          "gloss read "
              + lane.gloss().size()
              + (lane.gloss().size() == 1 ? " time" : " times")
              + ", last "
              + Math.round(last.gloss())
              + " on "
              + DateWords.dated(last.day()));
    }
    if (!lane.water().isEmpty()) {
      BoatTimeline.WaterMark last = lane.water().get(lane.water().size() - 1);
      parts.add("water last " + did(last.behaviour()) + " on " + DateWords.dated(last.day()));
    }
    lane.renewBy().ifPresent(d -> parts.add("best renewed by " + DateWords.dated(d)));
    return lane.name() + ": " + (parts.isEmpty() ? "nothing yet" : String.join("; ", parts)) + ".";
  }

  private static String did(WaterBehaviour behaviour) {
    return switch (behaviour) {
      case BEADS -> "beaded";
      case SHEETS -> "sheeted";
      case FLAT -> "lay flat";
    };
  }
}
