/**
 * What plain statistics says of lives that were seen only in part: Kaplan and Meier's estimate,
 * Turnbull's for intervals, and the censored log-normal and Weibull fits by maximum likelihood.
 * They stand beside the forecast for people to see, and for anyone to check with another tool; no
 * date comes from here. Start at {@link hullalmanac.core.life.fit.LifetimeFit}. Units are free.
 */
package hullalmanac.core.life.fit;
