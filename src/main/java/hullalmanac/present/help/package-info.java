/**
 * Help: the guide in the program, its keys, and what is to be known of the program itself. Start at
 * {@link hullalmanac.present.help.HelpPresenter}.
 */
package hullalmanac.present.help;
