/** Bytes to values and back, one package a format. Nothing here decides what is right. */
package hullalmanac.exchange;
