package hullalmanac.present;

/**
 * What stands where there is nothing to show yet: the one useful thing, and a button that does it.
 *
 * @param words what is missing and what brings it about, in one or two sentences
 */
public record Invitation(String title, String words, String button) {}
