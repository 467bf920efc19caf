/** Letters: texts with fields in braces, filled. */
package hullalmanac.exchange.letter;
