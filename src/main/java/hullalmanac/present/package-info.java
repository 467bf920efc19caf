/**
 * What the window shows and what can be done in it, without any toolkit: a folder a place, each
 * with a state and a presenter.
 *
 * <p>Start at {@link hullalmanac.present.shell.ShellPresenter}. No component, colour or SQL belongs
 * here.
 */
package hullalmanac.present;
