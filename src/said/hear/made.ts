// Why: only some parts come with the name and the serial number of a maker.

/** Parts that come with a maker's name. The coach has its own way of being named. */
export const made =
  /tire|engine|generator|chassis_label|ac_|roof_mem|refrigerator|inverter|furnace|water_heater|transmission|awning|solar|batter|toilet|tv_|hitch|washer|microwave|dishwasher|levelling|hydronic|cooktop|oven|camera|radio|antenna|suspension|brake|axle|lp_|pump|mattress|seat|slide|pin_box|tow_bar|wheels|air_|transfer_switch|monitor|vents_roof|bath_fan|ice_maker|fireplace|differential|steering_gear|thermostats|alternator|windows_side|macerator|turbo|tongue_jack|brake_controller|shocks/;
