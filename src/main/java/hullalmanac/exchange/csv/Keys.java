package hullalmanac.exchange.csv;

import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The people's own ids and the ids of the record that stand for them. */
final class Keys {
  private final Map<Kind, Map<String, Entry>> entries = new EnumMap<>(Kind.class);
  private final Map<Kind, Map<Id<?>, String>> keys = new EnumMap<>(Kind.class);

  /**
   * Where an id was first seen.
   *
   * @param line line of the file, 0 when it is in the record already
   */
  record Entry(Id<?> id, long line) {}

  /** Notes an id that is there; returns the earlier entry when the same was noted before. */
  Optional<Entry> note(Kind kind, String key, Id<?> id, long line) {
    Entry before =
        entries.computeIfAbsent(kind, k -> new HashMap<>()).putIfAbsent(key, new Entry(id, line));
    if (before == null) {
      keys.computeIfAbsent(kind, k -> new HashMap<>()).put(id, key);
    }
    return Optional.ofNullable(before);
  }

  Optional<Entry> note(Kind kind, String key, IdSource ids, long line) {
    return note(kind, key, ids.<Object>next(), line);
  }

  /** The id that a person's own id stands for. */
  <T> Optional<Id<T>> find(Kind kind, String key) {
    return Optional.ofNullable(entries.getOrDefault(kind, Map.of()).get(key))
        .map(e -> new Id<T>(e.id().value()));
  }

  /** The person's own id of an id. */
  String key(Kind kind, Id<?> id) {
    String key = keys.getOrDefault(kind, Map.of()).get(id);
    if (key == null) {
      throw new IllegalArgumentException("no " + kind.one() + " has the id " + id.value());
    }
    return key;
  }

  /**
   * The known id nearest to a mistyped one, by letters to change, where one is near enough to be
   * meant.
   */
  Optional<String> nearest(Kind kind, String key) {
    return Nearest.of(key, entries.getOrDefault(kind, Map.of()).keySet());
  }
}
