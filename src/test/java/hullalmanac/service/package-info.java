/** Services on real records in folders of their own. */
package hullalmanac.service;
