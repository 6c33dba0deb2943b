export const PREDICT_USAGE = `Usage: npm run --silent predict -- FILE [options]
       npm run --silent predict -- --stack FILE [options]

Predicts every stack of every scenario of a notebook (.slabspring.json), or a single stack whose fields are all literals
(src/notebook/stack.schema.json, example demo-notebooks/one-stack.json) and which may bring materials of its own and the
walls beside it. FILE may be -, standard input.

  --json   one JSON object: SI units, levels in dB, null where there is no value
  --csv    one line for each scenario, stack and band; the ratings stand on every line
  without  tables for reading

  --from HZ              lowest band: 20, 25, 31.5, 40 or 50 Hz; 50 unless given
  --gains                also what every scenario gains over the notebook's reference scenario
  --simple               also textbook rules, where they fit the stack: mass law, finite panel, double leaf, floating
                         floor, covering, bare slab
  --sensitivities        also what 10 % more of every number of covering, layers and open gaps does to R and Ln
  --uncertainty          also how well R is known, and what assumed tolerances of the numbers do to R and Ln

  --room VOLUME          also the values as they would be measured in a room of this volume below, m³ unless a unit stands
                         with it: ASTC, NNIC, NIC, R′w, DnT,w, Dn,w, AIIC, NISR, ISR, L′n,w, L′nT,w; and in which bands the
                         room has too few modes for a level that is the same everywhere
  --reverberation TIME   of that room, s; 0.5 unless given
  --source CSV           levels in the room above (headings "frequency" and "level"; one-third octaves, or octaves, which are
                         spread over their thirds): levels below, LA, NC, NR, RC, loudness level, and what is heard over the
                         threshold of hearing; needs --room
  --background CSV       levels in the room below without the source, which hide it too; needs --source

Columns of --csv, those of an option only with it:
  scenario, stack, frequency_Hz; R_dB and Ln_dB with the part of each path; the ratings; surfaceMass_kg_m2, height_m
  outside_checked                    what lies far outside of the measured constructions behind the accuracy table; empty:
                                     nothing does
  walls_in_ratings                   the sounds whose ratings count what goes around by the walls, so that they are apparent
                                     ones: airborne (ASTC, R′w), or airborne and impact (AIIC, L′n,w too); empty: none
  dL_slab_dB, dLw, CIdelta, dLlin, dIIC   what covering and leaves on mats take off impact sound on a bare concrete slab of
                                     140 mm, ISO 717-2 and ASTM E2179; empty where neither lies on the floor
  field_…                            --room: values as measured in the building; room_modes: diffuse, few-modes, no-modes
  path, path_share, mechanism, mechanism_Hz, mechanism_dB   what rules R in the band, its share of the energy, the frequency
                                     behind it, and by how much a resonance lowers R there
  impact_path, impact_path_share, impact_mechanism …   what rules Ln: resonances raise it; hammer-contact takes so much force
  R_gain_dB, Ln_gain_dB              --gains: over the reference scenario; for Ln the drop
  above_dB, below_dB, loudness_phon, threshold_dB, background_dB, excess_dB, audible, below_LA, below_NC …   --source
  PATH, dR_dB PATH +10 %, dLn_dB PATH +10 %   --sensitivities: the number at PATH and what a tenth more of it does
  R_uncertainty_dB, R_95percent_dB, R_tolerances_dB, Ln_tolerances_dB   --uncertainty
  simple_…_dB                        --simple: massLaw, sewell, doubleLeaf (R), floating, covering (ΔL), bareSlab (R+Ln)

Exit code: 0 predicted, 1 a file cannot be read or computed (every problem on standard error), 2 wrong use.`;
