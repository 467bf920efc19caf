/**
 * Draws chart data as charts, for the screen and for paper alike; no Swing here. Start at {@link
 * hullalmanac.chart.HistoryChart}.
 */
package hullalmanac.chart;
