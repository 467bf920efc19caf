package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.report.DateWords;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.service.Papers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which papers there are about a boat; each opens as it would be printed. */
public final class PapersSheet extends ShownSheet {
  private static final String NEWEST = "the newest that was done";
  private static final Map<Papers.Sort, String> OF_HER = new LinkedHashMap<>();
  private static final Map<Papers.Sort, String> OF_VISIT = new LinkedHashMap<>();

  static {
    OF_HER.put(Papers.Sort.HISTORY, "History for the owner");
    OF_HER.put(Papers.Sort.ESTIMATE, "Estimate");
    OF_HER.put(Papers.Sort.CARD, "Job card");
    OF_VISIT.put(Papers.Sort.CONDITION, "Condition report");
    OF_VISIT.put(Papers.Sort.CARE, "Care card");
  }

  private final Id<Boat> boat;
  private Optional<LocalDate> visit;

  public PapersSheet(Desk desk, Id<Boat> boat) {
    this(desk, boat, Optional.empty());
  }

  /**
   * @param visit the day of a visit that was done, to begin with
   */
  PapersSheet(Desk desk, Id<Boat> boat, Optional<LocalDate> visit) {
    super(desk);
    this.boat = boat;
    this.visit = visit;
  }

  private Optional<Boat> one(Fleet fleet) {
    return fleet.almanac().boats().stream().filter(b -> b.id().equals(boat)).findFirst();
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(buttons(OF_HER));
    blocks.add(
        new SheetState.Form(
            "visit",
            "",
            List.of(
                new SheetState.Field(
                    "day",
                    "Of the visit of",
                    new Input.Choice(choices(fleet)),
                    visit.map(d -> words(fleet, d)).orElse(NEWEST),
                    Said.NOTHING))));
    blocks.add(buttons(OF_VISIT));
    blocks.add(new SheetState.Buttons(List.of(new SheetState.Button("done", "Done", false))));
    return new SheetState(
        "Papers of " + one(fleet).map(Boat::name).orElse("a boat that is gone"),
        "Each opens as it would be printed, to be saved, opened or printed from there. The estimate"
            + " is her newest, the job card of the next visit that is planned.",
        blocks,
        Optional.empty());
  }

  private List<LocalDate> days(Fleet fleet) {
    return fleet.almanac().visits().stream()
        .filter(v -> v.boat().equals(boat) && v.status() == VisitStatus.DONE)
        .map(Visit::day)
        .distinct()
        .sorted(Comparator.reverseOrder())
        .toList();
  }

  private List<String> choices(Fleet fleet) {
    List<String> all = new ArrayList<>(List.of(NEWEST));
    days(fleet).forEach(d -> all.add(words(fleet, d)));
    return all;
  }

  private static String words(Fleet fleet, LocalDate day) {
    return new DateWords(fleet.asOf()).exact(day);
  }

  private static SheetState.Buttons buttons(Map<Papers.Sort, String> papers) {
    return new SheetState.Buttons(
        papers.entrySet().stream()
            .map(
                e ->
                    new SheetState.Button(
                        e.getKey().code(), e.getValue(), e.getKey() == Papers.Sort.HISTORY))
            .toList());
  }

  @Override
  public Said say(At at, String text) {
    return Said.NOTHING;
  }

  @Override
  public void enter(At at, String text) {
    fleet()
        .ifPresent(f -> visit = days(f).stream().filter(d -> words(f, d).equals(text)).findFirst());
    publish();
  }

  @Override
  public void press(String button) {
    if (button.equals("done")) {
      desk.leave();
      return;
    }
    Papers.Sort sort = Coded.parse(Papers.Sort.class, button).orElseThrow();
    fleet()
        .flatMap(this::one)
        .ifPresent(
            her ->
                desk.open(
                    PaperSheet.of(
                        desk,
                        new Papers.Asked(
                            sort,
                            Optional.of(her.key()),
                            OF_VISIT.containsKey(sort) ? visit : Optional.empty(),
                            Optional.empty(),
                            Optional.empty()))));
  }

  @Override
  public Topic topic() {
    return Topic.PAPER;
  }
}
