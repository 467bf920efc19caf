package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.With;
import hullalmanac.present.sheet.Input;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Fields of a photo of the record. */
final class PhotoFields {
  private static final String WHOLE = "whole boat";

  private PhotoFields() {}

  static List<FieldOf<Photo>> of(FieldMaker make, List<Surface> surfaces) {
    return List.of(
        caption(), where(surfaces), make.choice("moment", "Shows", Moment.class, Photo::moment));
  }

  private static FieldOf<Photo> caption() {
    return new FieldOf<>(
        "caption",
        "Caption",
        new Input.Line("what it shows"),
        Photo::caption,
        (photo, typed) -> new Entry.Read<>(With.component(photo, "caption", typed.strip()), ""));
  }

  private static FieldOf<Photo> where(List<Surface> surfaces) {
    List<String> words = new ArrayList<>(surfaces.stream().map(Surface::words).toList());
    words.add(0, WHOLE);
    return new FieldOf<>(
        "surface",
        "Surface",
        new Input.Choice(words),
        photo ->
            surfaces.stream()
                .filter(s -> photo.surface().equals(Optional.of(s.id())))
                .map(Surface::words)
                .findFirst()
                .orElse(WHOLE),
        (photo, typed) ->
            FieldMaker.oneOf(words, typed)
                .map(
                    word ->
                        With.component(
                            photo,
                            "surface",
                            surfaces.stream()
                                .filter(s -> s.words().equals(word))
                                .map(Surface::id)
                                .findFirst())));
  }
}
