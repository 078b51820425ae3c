package contrapposto.quantity;

/** The units a handout prints: centimetres and kilograms, or inches and pounds. Everything is computed in SI. */
public enum UnitSystem { METRIC, US }
