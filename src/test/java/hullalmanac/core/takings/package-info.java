/** What invoices, credits, payments and estimates hold to. */
package hullalmanac.core.takings;
