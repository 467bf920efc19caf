/** Markdown to pages of the guide. Start at {@link hullalmanac.exchange.guide.GuideReader}. */
package hullalmanac.exchange.guide;
