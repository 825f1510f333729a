/** Constants of nature and of the lead-acid cell. Each stands here once, with its unit and where it is from. */

/** Charge of one mole of electrons, C/mol: e·N_A, exact since the SI of 2019 (CODATA 2018, from memory). */
export const faradayCPerMol = 96_485.332_12;

/** Molar gas constant, J/(mol K): k·N_A, exact since the SI of 2019 (CODATA 2018, from memory). */
export const gasConstantJPerMolK = 8.314_462_618;

/** Molar mass of sulphuric acid, g/mol (CRC Handbook of Chemistry and Physics; 98.078 and 98.08 are in use too). */
export const acidGPerMol = 98.079;

/** Molar mass of water, g/mol. */
export const waterGPerMol = 18.015_28;

export const secondsPerHour = 3600;

/** 0 °C in kelvin, exact. */
export const zeroCelsiusK = 273.15;

/** One standard atmosphere, kPa, exact. */
export const standardAtmosphereKPa = 101.325;

/** One mole of electrons in ampere-hours: F/3600 = 26.801 Ah/mol. */
export const ampereHoursPerMol = faradayCPerMol / secondsPerHour;

/**
 * Acid bound on discharge and released on charge, kg per ampere-hour and cell.
 * Pb + PbO2 + 2 H2SO4 = 2 PbSO4 + 2 H2O passes two moles of electrons for two of acid, so one for one: 3.6595 g.
 */
export const acidKgPerAh = acidGPerMol / ampereHoursPerMol / 1000;

/** Water formed on discharge and used up on charge, kg per ampere-hour and cell: one mole a mole of electrons, 0.6722 g. */
export const waterKgPerAh = waterGPerMol / ampereHoursPerMol / 1000;

/** The temperature to which densities and rest voltages are referred throughout, °C. */
export const referenceTemperatureC = 25;
