/** Floor 0, quantity: lengths, masses, angles and sides as types whose constructors refuse nonsense. */
package contrapposto.quantity;
