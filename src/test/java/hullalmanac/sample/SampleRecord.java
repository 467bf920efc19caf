package hullalmanac.sample;

import hullalmanac.core.record.Almanac;
import java.util.Map;

/**
 * The sample: an almanac and its photo files, the same at every run.
 *
 * @param photos contents by file name
 */
public record SampleRecord(Almanac almanac, Map<String, byte[]> photos) {
  public static SampleRecord make() {
    Draft draft = new Draft();
    SamplePlaces.add(draft);
    SampleProducts.add(draft);
    SampleBoats.add(draft);
    SampleBerths.add(draft);
    new SampleHistory(draft).add();
    Map<String, byte[]> photos = SamplePhotos.add(draft);
    return new SampleRecord(
        SampleReminders.add(SampleLetters.add(SampleMoney.add(draft.almanac()))), photos);
  }
}
