/** The first start, or one on which the record is not where it was. */
package hullalmanac.present.start;
