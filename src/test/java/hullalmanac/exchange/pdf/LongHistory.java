package hullalmanac.exchange.pdf;

import hullalmanac.core.paper.HistoryPaper;
import hullalmanac.core.paper.Paper;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.With;
import hullalmanac.fixture.OpenSample;
import hullalmanac.service.Fleet;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;

/** A boat with many visits, and photos as large and as restless as those of a phone. */
final class LongHistory {
  private static final int YEARS = 5;
  private static final int PAIRS = 12;

  private LongHistory() {}

  static Paper in(Path photos) throws IOException {
    Fleet fleet = OpenSample.fleet();
    Photo one = fleet.almanac().photos().get(0);
    Id<Boat> boat = one.boat();
    List<Visit> visits =
        fleet.almanac().visits().stream().filter(v -> v.boat().equals(boat)).toList();
    List<Row> rows = new ArrayList<>();
    long id = 5_000_000;
    for (int year = 1; year <= YEARS; year++) {
      for (Visit visit : visits) {
        Id<Visit> copied = new Id<>(id++);
        Visit copy = With.component(visit, "id", copied);
        copy = With.component(copy, "key", visit.key() + "-" + year);
        rows.add(With.component(copy, "day", visit.day().minusYears(4L * year)));
        for (Step step : fleet.almanac().steps()) {
          if (step.visit().equals(visit.id())) {
            Step other = With.component(step, "id", new Id<Step>(id++));
            other = With.component(other, "key", step.key() + "-" + year);
            other = With.component(other, "visit", copied);
            rows.add(With.component(other, "day", step.day().minusYears(4L * year)));
          }
        }
      }
    }
    fleet.almanac().photos().stream()
        .filter(p -> p.boat().equals(boat))
        .forEach(p -> rows.add(With.component(p, "boat", other(fleet, boat))));
    for (int i = 0; i < 2 * PAIRS; i++) {
      Photo photo = With.component(one, "id", new Id<Photo>(id++));
      photo = With.component(photo, "key", "long-" + i);
      photo = With.component(photo, "visit", Optional.of(visits.get(0).id()));
      photo = With.component(photo, "moment", i < PAIRS ? Moment.BEFORE : Moment.AFTER);
      rows.add(With.component(photo, "file", file(photos, i)));
    }
    return HistoryPaper.of(fleet.almanac().with(Edit.put(rows)), fleet.coats(), fleet.asOf(), boat);
  }

  private static Id<Boat> other(Fleet fleet, Id<Boat> boat) {
    return fleet.almanac().boats().stream()
        .map(Boat::id)
        .filter(b -> !b.equals(boat))
        .findFirst()
        .orElseThrow();
  }

  private static String file(Path folder, int number) throws IOException {
    Random random = new Random(number);
    BufferedImage image = new BufferedImage(3000, 2250, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setPaint(new GradientPaint(0, 0, Color.GRAY, 3000, 2250, new Color(random.nextInt(1 << 24))));
    g.fillRect(0, 0, 3000, 2250);
    for (int i = 0; i < 3000; i++) {
      g.setColor(new Color(random.nextInt(1 << 24)));
      g.drawLine(
          random.nextInt(3000), random.nextInt(2250), random.nextInt(3000), random.nextInt(2250));
    }
    g.dispose();
    String name = String.format("%064x.jpg", number + 1);
    ImageIO.write(image, "jpeg", folder.resolve(name).toFile());
    return name;
  }
}
