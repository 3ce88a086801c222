/** Why words that sound of danger are none by themselves; by topic, fact and value. */
const SURROUNDINGS = "what is around a hot or live part, which is danger only with that part";
const ENCLOSED = "live metal that something still covers or keeps apart: a layer that holds until one event";
const ABSENT = "how a part is made or placed, not what has happened to it";
const PART_OF = "says more of a state that another fact of the topic names, and nothing without it";

const CASES_AT_INTAKE = [
  "intake-hot",
  "distributor-equipment-damaged",
  "supply-tampered",
  "meter-tails-exposed",
  "connector-block-open",
  "origin-isolator",
];

export const CONSIDERED: Readonly<Record<string, string>> = Object.freeze({
  "basic-protection gets-in finger-short": ENCLOSED,
  "basic-protection gets-in wire-on-top": ENCLOSED,
  "basic-protection live-covering basic-damaged": ENCLOSED,
  "basic-protection wears heat-weather-rodents": SURROUNDINGS,
  "board-cover-missing gets-in finger-short": ENCLOSED,
  "board-cover-missing gets-in wire-on-top": ENCLOSED,
  "board-blank-missing gets-in finger-short": ENCLOSED,
  "board-blank-missing gets-in wire-on-top": ENCLOSED,
  "board-top-opening gets-in finger-short": ENCLOSED,
  "board-top-opening gets-in wire-on-top": ENCLOSED,
  "board-cable-entry gets-in finger-short": ENCLOSED,
  "board-cable-entry gets-in wire-on-top": ENCLOSED,
  "old-wooden-board gets-in finger-short": ENCLOSED,
  "old-wooden-board gets-in wire-on-top": ENCLOSED,
  "fuse-carrier-broken gets-in finger-short": ENCLOSED,
  ...Object.fromEntries(
    CASES_AT_INTAKE.flatMap((topic) => [
      [`${topic} gets-in finger-short`, ENCLOSED],
      [`${topic} gets-in wire-on-top`, ENCLOSED],
    ]),
  ),
  "meter-tails-exposed wears heat-weather-rodents": SURROUNDINGS,
  "joint-not-enclosed terminals taped": ENCLOSED,
  "lampholder-or-rose-open state off": ENCLOSED,
  "polarity-reversed-at-point live-when-off in-use": PART_OF,
  "neutral-switched-or-fused live-in-use yes": PART_OF,
  "accessory-overheated cause-removed no": PART_OF,
  "board-overheating cause put-right-today": PART_OF,
  "board-overheating cause still-there": PART_OF,
  "insulation-falling cause deteriorating": PART_OF,
  "accessory-overheated marks browned":
    "browned and whole; with its cause put right it is a mark and no more, and while it is not it is one event away",
  "board-overheating marks discoloured":
    "insulation still whole and supple; with its cause put right it is a mark and no more",
  "cable-bunched-or-hot sheath discoloured":
    "insulation still whole and supple; with its cause put right it is a mark and no more",
  "accessory-connection-loose connection untidy": ABSENT,
  "accessory-connection-loose burns-nearby yes": SURROUNDINGS,
  "accessory-over-hob place close": ABSENT,
  "accessory-over-hob place over": ABSENT,
  "back-box-missing behind open-cavity": SURROUNDINGS,
  "board-combustible combustible yes": SURROUNDINGS,
  "board-fixing rear open-to-wood": SURROUNDINGS,
  "board-things-stored stored in-the-way": SURROUNDINGS,
  "cable-damaged beside-combustible yes": SURROUNDINGS,
  "cable-near-services pipe touching": SURROUNDINGS,
  "cooker-isolation-missing switch over-hob": ABSENT,
  "cpc-unsleeved near-terminals yes": ENCLOSED,
  "cpc-unsleeved sleeve bare": "a protective conductor is not live",
  "downlight-insulation covered yes": SURROUNDINGS,
  "downlight-insulation heat cool": ABSENT,
  "emergency-switching-missing danger foreseeable": "what could happen, against which the topic asks for a device",
  "hot-equipment-clearance clearance short": SURROUNDINGS,
  "hot-equipment-clearance clearance touching": SURROUNDINGS,
  "intake-surroundings stored against": SURROUNDINGS,
  "intake-surroundings stored near": SURROUNDINGS,
  "joint-not-enclosed combustible yes": SURROUNDINGS,
  "lighting-transformer bare bare-protected": "extra-low voltage after a safety source",
  "lighting-transformer bare bare-unprotected":
    "extra-low voltage after a safety source; a short circuit is one event away",
  "lighting-transformer place covered": SURROUNDINGS,
  "live-conductors-unterminated metal-beside yes": SURROUNDINGS,
  "luminaire-heat near-fuel too-near": SURROUNDINGS,
  "meter-tails-entry edge bare": ABSENT,
  "mobile-outdoors-no-rcd used-outdoors open": "bare is not said of metal here: equipment used in the open",
  "outdoor-luminaire-damaged state weathered": ENCLOSED,
  "sauna-equipment heat-rated no": ABSENT,
  "sheath-missing joint open-clear": SURROUNDINGS,
  "sheath-missing joint open-combustible": SURROUNDINGS,
});
