package hullalmanac.present.edit;

import hullalmanac.present.Desk;
import hullalmanac.present.sheet.Picture;
import hullalmanac.service.PhotoService;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Small pictures, read one after the other, so that what a person writes meanwhile waits for one
 * picture at most. Those asked for last are kept.
 */
final class Previews {
  private static final int MOST_KEPT = 120;

  private final Desk desk;
  private final Reading reading;
  private final Deque<Wanted> waiting = new ArrayDeque<>();
  private final Map<Key, Picture> kept = new LinkedHashMap<>();
  private boolean busy;

  /** Reads a small picture. */
  @FunctionalInterface
  interface Reading {
    PhotoService.Small of(PhotoService photos, String file, int side);
  }

  private record Key(String file, int side) {}

  private record Wanted(Key key, Consumer<Picture> answer) {}

  Previews(Desk desk, Reading reading) {
    this.desk = desk;
    this.reading = reading;
  }

  /** Asks for a picture. */
  void ask(String file, int side, Consumer<Picture> answer) {
    waiting.add(new Wanted(new Key(file, side), answer));
    next();
  }

  private void next() {
    while (!busy && !waiting.isEmpty()) {
      Wanted wanted = waiting.remove();
      Picture known = kept.get(wanted.key());
      if (known != null) {
        wanted.answer().accept(known);
      } else {
        busy = true;
        desk.ask(
            edits -> reading.of(edits.photos(), wanted.key().file(), wanted.key().side()),
            small -> arrived(wanted, small));
      }
    }
  }

  private void arrived(Wanted wanted, PhotoService.Small small) {
    busy = false;
    Picture picture = new Picture(small.pixels(), small.words());
    if (kept.size() >= MOST_KEPT) {
      kept.remove(kept.keySet().iterator().next());
    }
    kept.put(wanted.key(), picture);
    wanted.answer().accept(picture);
    next();
  }
}
