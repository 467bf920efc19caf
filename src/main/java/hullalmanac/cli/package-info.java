/**
 * The command line: one small class a command. No command opens the window; that is what the
 * program does without one.
 *
 * <p>Start at {@link hullalmanac.cli.HullAlmanacCommand}. Exit codes: 0 done, 1 something given is
 * wrong (said on standard error, one line each), 2 wrong usage.
 */
package hullalmanac.cli;
