package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Act;
import hullalmanac.present.Desk;
import hullalmanac.present.house.House;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.service.HouseService;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** Two almanacs in one folder: what each has that the other has not, and what can be done. */
public final class OthersSheet implements Sheet {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm", Locale.ENGLISH);
  private static final int MOST_SHOWN = 30;

  private final Desk desk;
  private final House house;
  private final HouseService.Other other;
  private final ZoneId zone;
  private final Runnable gone;

  /**
   * @param gone what follows when the other is there no more
   */
  public OthersSheet(Desk desk, House house, HouseService.Other other, ZoneId zone, Runnable gone) {
    this.gone = gone;
    this.desk = desk;
    this.house = house;
    this.other = other;
    this.zone = zone;
  }

  @Override
  public void onChange(Consumer<SheetState> view) {
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(
        new SheetState.Words(
            "A program that keeps folders alike on two computers lays such a file beside the"
                + " record when both wrote. Nothing was merged and nothing is lost. Write what is"
                + " only in the other into this record by hand where it is little; then lay the"
                + " other aside. It is kept among the copies."));
    blocks.add(table("Only in the other", other.onlyThere()));
    blocks.add(table("Only in this record", other.onlyHere()));
    blocks.add(
        new SheetState.Buttons(
            List.of(
                new SheetState.Button("aside", "Keep this record, lay the other aside", true),
                new SheetState.Button("other", "Take the other instead", false),
                new SheetState.Button("later", "Decide later", false))));
    view.accept(
        new SheetState(
            "Another almanac lies in the folder", other.file(), blocks, Optional.empty()));
  }

  private void layAside() {
    desk.act(
        edits -> edits.house().layAside(other.file()),
        at -> {
          desk.leave();
          gone.run();
        });
  }

  private SheetState.Table table(String heading, List<Act> acts) {
    String more = acts.size() > MOST_SHOWN ? ", the newest " + MOST_SHOWN : "";
    return new SheetState.Table(
        heading + ": " + acts.size() + (acts.size() == 1 ? " act" : " acts") + more,
        List.of("When", "What", "Where"),
        acts.stream()
            .limit(MOST_SHOWN)
            .map(a -> List.of(WHEN.format(a.at().atZone(zone)), a.what(), a.device()))
            .toList(),
        "Nothing.");
  }

  @Override
  public void show(Fleet fleet) {
    // What was compared stays as it was compared.
  }

  @Override
  public Said say(At at, String text) {
    return Said.NOTHING;
  }

  @Override
  public void enter(At at, String text) {
    throw new IllegalArgumentException("nothing is written here");
  }

  @Override
  public void press(String button) {
    switch (button) {
      case "aside" -> layAside();
      case "other" -> house.putInPlace(other.file());
      default -> desk.leave();
    }
  }

  @Override
  public Topic topic() {
    return Topic.OTHERS;
  }
}
