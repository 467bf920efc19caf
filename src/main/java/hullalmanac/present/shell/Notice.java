package hullalmanac.present.shell;

/**
 * Something that is to be known as long as it stands, above the places.
 *
 * @param button what can be done about it
 */
public record Notice(String id, String words, String button) {}
