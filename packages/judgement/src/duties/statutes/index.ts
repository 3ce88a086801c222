import type { DutyTable } from "../row.ts";
import { ELECTRICITY_AT_WORK, ELECTRICITY_AT_WORK_NORTHERN_IRELAND } from "./electricity-at-work.ts";
import { ENGLAND_HAZARDS } from "./england-hazards.ts";
import { ENGLAND_RENTED } from "./england-rented.ts";
import { HMO_ENGLAND, HMO_NORTHERN_IRELAND, HMO_SCOTLAND, HMO_WALES } from "./houses-in-multiple-occupation.ts";
import { NORTHERN_IRELAND_RENTED } from "./northern-ireland-rented.ts";
import { SCOTLAND_RENTED } from "./scotland-rented.ts";
import { WALES_RENTED } from "./wales-rented.ts";

/** Every statute with its duties. */
export const STATUTES: readonly DutyTable[] = Object.freeze([
  ENGLAND_RENTED,
  ENGLAND_HAZARDS,
  WALES_RENTED,
  SCOTLAND_RENTED,
  NORTHERN_IRELAND_RENTED,
  HMO_ENGLAND,
  HMO_WALES,
  HMO_SCOTLAND,
  HMO_NORTHERN_IRELAND,
  ELECTRICITY_AT_WORK,
  ELECTRICITY_AT_WORK_NORTHERN_IRELAND,
]);
