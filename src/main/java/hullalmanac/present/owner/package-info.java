/**
 * A boat as her owner sees her. Start at {@link hullalmanac.present.owner.OwnerPresenter}.
 *
 * <p>What is shown is chosen here word by word; no note, price, key, absence or name of anybody
 * enters the state.
 */
package hullalmanac.present.owner;
