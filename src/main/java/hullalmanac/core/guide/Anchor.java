package hullalmanac.core.guide;

/**
 * A place on a page that one can go to.
 *
 * @param id as links name it
 * @param words what stands there
 * @param heading whether it is a heading, and not only a paragraph that begins with bold words
 */
public record Anchor(String id, String words, boolean heading) {}
