package hullalmanac.core.find;

/**
 * One thing found.
 *
 * @param title its name, or for a note its text
 * @param detail what tells it from others of that name, and which of its words was found where the
 *     title does not show it
 */
public record Hit(HitKind kind, String title, String detail, Target target) {}
