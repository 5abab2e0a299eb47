"""Reference curve for the sun and the cells: a second implementation, Python standard library only.

    python3 reference.py > reference.csv

Shares no code with Ledgerwing. Position: low-precision formulas of the Astronomical Almanac (good to about 0.01 degree
until 2050), refraction after Saemundsson. Headings are averaged one degree by one degree. Light: Bird and Hulstrom, 1981.
"""
import math
from datetime import datetime, timedelta, timezone

D = math.pi / 180
PEAK_W, GAMMA, TILT, SKY, CHAIN, TRACKER, AIR_C, HEIGHT_M, HEADING = 100, -0.0035, 12, 0.9, 0.92, 0.96, 15, 400, 200
CASES = [("north-june", 53.2, -6.8, 2026, 6, 1), ("north-december", 53.2, -6.8, 2026, 12, 0),
         ("south-june", -33.5, 18.9, 2026, 6, 2), ("south-december", -33.5, 18.9, 2026, 12, 2)]


def sun(utc, lat, lon, hpa, air_c):
    n = (utc - datetime(2000, 1, 1, 12, tzinfo=timezone.utc)).total_seconds() / 86400
    mean = (280.460 + 0.9856474 * n) % 360
    anomaly = (357.528 + 0.9856003 * n) * D
    ecliptic = (mean + 1.915 * math.sin(anomaly) + 0.020 * math.sin(2 * anomaly)) * D
    obliquity = (23.439 - 0.0000004 * n) * D
    ra = math.atan2(math.cos(obliquity) * math.sin(ecliptic), math.cos(ecliptic))
    dec = math.asin(math.sin(obliquity) * math.sin(ecliptic))
    sidereal = (18.697374558 + 24.06570982441908 * n) * 15 + lon
    hour = sidereal * D - ra
    # a vector to the sun: east, north, up
    east = -math.cos(dec) * math.sin(hour)
    north = math.sin(dec) * math.cos(lat * D) - math.cos(dec) * math.cos(hour) * math.sin(lat * D)
    up = math.sin(dec) * math.sin(lat * D) + math.cos(dec) * math.cos(hour) * math.cos(lat * D)
    elevation = math.asin(up) / D
    if elevation > -0.84:
        minutes = 1.02 / math.tan((elevation + 10.3 / (elevation + 5.11)) * D)
        elevation += minutes / 60 * hpa / 1010 * 283 / (273 + air_c)
    return 90 - elevation, math.atan2(east, north) / D % 360


def bird(zenith, day, hpa):
    if zenith >= 90:
        return 0.0, 0.0, 0.0
    b = 2 * math.pi * (day - 1) / 365
    etr = 1367 * (1.00011 + 0.034221 * math.cos(b) + 0.00128 * math.sin(b) + 0.000719 * math.cos(2 * b)
                  + 0.000077 * math.sin(2 * b))
    cz = math.cos(zenith * D)
    am = 1 / (cz + 0.50572 * (96.07995 - zenith) ** -1.6364)
    ap = min(am * hpa / 1013.25, 14.094)
    o3, h2o, ba, albedo = 0.3 * am, 1.5 * am, 0.85, 0.2
    tau = 0.27583 * 0.15 + 0.35 * 0.1
    tr = math.exp(-0.0903 * ap ** 0.84 * (1 + ap - ap ** 1.01))
    to = 1 - 0.1611 * o3 * (1 + 139.48 * o3) ** -0.3034 - 0.002715 * o3 / (1 + 0.044 * o3 + 0.0003 * o3 ** 2)
    tg = math.exp(-0.0127 * (am * hpa / 1013.25) ** 0.26)
    tw = 1 - 2.4959 * h2o / ((1 + 79.034 * h2o) ** 0.6828 + 6.385 * h2o)
    ta = math.exp(-tau ** 0.873 * (1 + tau - tau ** 0.7088) * am ** 0.9108)
    taa = 1 - 0.1 * (1 - am + am ** 1.06) * (1 - ta)
    dni = 0.9662 * etr * ta * tw * tg * to * tr
    ias = etr * cz * 0.79 * to * tg * tw * taa * (0.5 * (1 - tr) + ba * (1 - ta / taa)) / (1 - am + am ** 1.02)
    ghi = (dni * cz + ias) / (1 - albedo * (0.0685 + (1 - ba) * (1 - ta / taa)))
    return dni, ghi - dni * cz, ghi


def on_cells(zenith, azimuth, faces, dni, dhi, ghi):
    """Scalar product of the vector to the sun and the upright of the cells."""
    s = (math.sin(zenith * D) * math.sin(azimuth * D), math.sin(zenith * D) * math.cos(azimuth * D), math.cos(zenith * D))
    p = (math.sin(TILT * D) * math.sin(faces * D), math.sin(TILT * D) * math.cos(faces * D), math.cos(TILT * D))
    direct = max(0.0, sum(a * b for a, b in zip(s, p)))
    return dni * direct + dhi * (1 + math.cos(TILT * D)) / 2 + 0.2 * ghi * (1 - math.cos(TILT * D)) / 2


def watts(light):
    cell_c = AIR_C + (45 - 20) / 800 * light
    return PEAK_W * light / 1000 * (1 + GAMMA * (cell_c - 25)) * TRACKER * CHAIN


print("# Made by reference.py beside this file: see there. Cells: 100 W, -0.35 %/C, leaning 12 degrees outwards on both wings,")
print("# sky 90 %, chain 92 %, tracker 96 %, air 15 C, 400 m; 'heading_w' is flown on 200 degrees. Clock time.")
print("case,hour,zenith_deg,azimuth_deg,direct_wm2,diffuse_wm2,circling_w,heading_w")
for name, lat, lon, year, month, ahead in CASES:
    hpa = ((44331.514 - HEIGHT_M) / 11880.516) ** (1 / 0.1902632)
    for half in range(0, 48):
        local = datetime(year, month, 21, tzinfo=timezone(timedelta(hours=ahead))) + timedelta(hours=half / 2)
        z, az = sun(local.astimezone(timezone.utc), lat, lon, hpa, AIR_C)
        dni, dhi, ghi = (SKY * v for v in bird(z, local.timetuple().tm_yday, hpa))
        mean = sum(on_cells(z, az, faces, dni, dhi, ghi) for faces in range(360)) / 360
        sides = [on_cells(z, az, HEADING + side * 90, dni, dhi, ghi) for side in (1, -1)]
        print(f"{name},{half / 2},{z:.3f},{az:.3f},{dni:.2f},{dhi:.2f},{watts(mean):.3f},{sum(map(watts, sides)) / 2:.3f}")
