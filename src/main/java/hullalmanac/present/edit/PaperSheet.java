package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.paper.Paper;
import hullalmanac.core.record.Almanac;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.EditService;
import hullalmanac.service.Fleet;
import hullalmanac.service.MadePaper;
import hullalmanac.service.PaperService;
import hullalmanac.service.Papers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;

/** A paper as it comes out of the printer, to be saved, opened or printed. */
public final class PaperSheet extends ShownSheet {
  private final Function<Fleet, Papers.Outcome> wanted;
  private final Topic topic;
  private Optional<Seen> made = Optional.empty();
  private Optional<MadePaper> paper = Optional.empty();
  private boolean refused;
  private int making;
  private int edition;
  private String said = "Laying it out …";

  private PaperSheet(Desk desk, Function<Fleet, Papers.Outcome> wanted, Topic topic) {
    super(desk);
    this.wanted = wanted;
    this.topic = topic;
  }

  /** A paper asked for by what people call things. */
  public static PaperSheet of(Desk desk, Papers.Asked asked) {
    return new PaperSheet(desk, fleet -> new Papers(fleet).of(asked), Topic.PAPER);
  }

  /** A paper of a record; nothing once what it is about is gone. */
  static PaperSheet of(Desk desk, Function<Fleet, Optional<Paper>> wanted, Topic topic) {
    return new PaperSheet(
        desk,
        fleet ->
            wanted
                .apply(fleet)
                .<Papers.Outcome>map(Papers.Ready::new)
                .orElse(new Papers.Refused("What it is about was taken out of the record.")),
        topic);
  }

  /** What a paper was made of. */
  private record Seen(Almanac almanac, LocalDate day) {}

  /** A paper, or why there is none. */
  private record Laid(Optional<MadePaper> paper, String refused) {}

  @Override
  public void show(Fleet now) {
    super.show(now);
    Seen seen = new Seen(now.almanac(), now.asOf());
    if (!made.equals(Optional.of(seen))) {
      made = Optional.of(seen);
      int mine = ++making;
      desk.ask(
          EditService::papers,
          maker ->
              desk.reckon(
                  () -> lay(now, maker, paper),
                  laid -> {
                    if (mine == making) {
                      take(laid);
                    }
                  }));
    }
  }

  private Laid lay(Fleet fleet, MadePaper.Maker maker, Optional<MadePaper> before) {
    Papers.Outcome outcome = wanted.apply(fleet);
    if (outcome instanceof Papers.Refused refused) {
      return new Laid(Optional.empty(), refused.sentence());
    }
    Paper now = ((Papers.Ready) outcome).paper();
    return new Laid(
        before
            .filter(b -> b.paper().equals(now) && b.day().equals(fleet.asOf()))
            .or(() -> Optional.of(maker.make(now, fleet.asOf()))),
        "");
  }

  private void take(Laid laid) {
    if (laid.paper().isEmpty() || !laid.paper().equals(paper)) {
      edition++;
      said = laid.refused();
    }
    paper = laid.paper();
    refused = paper.isEmpty();
    publish();
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(new SheetState.Words(said));
    blocks.add(
        new SheetState.Words(paper.map(p -> String.join(" ", p.lacking())).orElse(""), true));
    blocks.add(new SheetState.Buttons(buttons()));
    blocks.add(new SheetState.Pages("pages", paper.map(this::pages).orElse(List.of())));
    return new SheetState(
        paper.map(p -> p.paper().name()).orElse("A paper"),
        paper.map(PaperSheet::facts).orElse(""),
        blocks,
        Optional.empty());
  }

  private static String facts(MadePaper paper) {
    int pages = paper.texts().size();
    return (pages == 1 ? "1 page" : pages + " pages") + " " + paper.paper().printedOn();
  }

  private List<SheetState.Button> buttons() {
    List<SheetState.Button> buttons = new ArrayList<>();
    if (!refused) {
      buttons.add(new SheetState.Button("save", "Save as PDF", true));
      buttons.add(new SheetState.Button("elsewhere", "Save elsewhere …", false));
      buttons.add(new SheetState.Button("open", "Open as PDF", false));
      buttons.add(new SheetState.Button("print", "Print …", false));
    }
    buttons.add(new SheetState.Button("done", "Done", false));
    return buttons;
  }

  private List<SheetState.Page> pages(MadePaper paper) {
    int all = paper.texts().size();
    return IntStream.range(0, all)
        .mapToObj(
            i ->
                new SheetState.Page(
                    edition + "/" + i,
                    "Page " + (i + 1) + " of " + all + ". " + paper.texts().get(i)))
        .toList();
  }

  @Override
  public void picture(String file, int side, Consumer<Picture> answer) {
    String[] parts = file.split("/", -1);
    Optional<MadePaper> now = paper.filter(p -> parts[0].equals(String.valueOf(edition)));
    now.ifPresent(
        p ->
            desk.reckon(
                () -> p.picture(Integer.parseInt(parts[1]), side),
                pixels -> answer.accept(new Picture(Optional.of(pixels), ""))));
  }

  @Override
  public void press(String button) {
    if (button.equals("done")) {
      desk.leave();
      return;
    }
    paper.ifPresent(p -> press(button, p));
  }

  private void press(String button, MadePaper now) {
    switch (button) {
      case "save" -> desk.ask(edits -> edits.writePaper(now), this::written);
      case "elsewhere" ->
          desk.outside()
              .where(now.fileName(), "PDF")
              .ifPresent(
                  file ->
                      desk.aside(
                          () -> {
                            PaperService.write(now, file);
                            return file;
                          },
                          this::written));
      case "open" ->
          desk.ask(
              edits -> edits.writePaper(now),
              file -> {
                written(file);
                desk.outside().open(file, not -> not.ifPresent(this::say));
              });
      default -> print(now);
    }
  }

  private void print(MadePaper now) {
    desk.outside().print(now, not -> say(not.orElse("Handed to the printer.")));
  }

  @Override
  public void onPaper() {
    paper.ifPresent(this::print);
  }

  private void written(String file) {
    say("Written to " + file + ".");
  }

  private void say(String words) {
    said = words;
    publish();
  }

  @Override
  public Said say(At at, String text) {
    return Said.NOTHING;
  }

  @Override
  public void enter(At at, String text) {
    // Nothing is written here.
  }

  @Override
  public boolean inPassing() {
    return true;
  }

  @Override
  public Topic topic() {
    return topic;
  }
}
