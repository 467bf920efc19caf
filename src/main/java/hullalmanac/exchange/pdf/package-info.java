/**
 * Papers as PDF/A-3A and PDF/UA-1, which anybody can keep and hear read. Start at {@link
 * hullalmanac.exchange.pdf.PaperPdf}.
 */
package hullalmanac.exchange.pdf;
