/**
 * The window as a whole: reading the record, going from place to place. Start at {@link
 * hullalmanac.present.shell.ShellPresenter}.
 */
package hullalmanac.present.shell;
