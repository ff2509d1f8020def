using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Heat;
using Runnel.Engine.Light;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>Light on each bed from lamps and sun, against what its crops need.</summary>
internal static class Lighting
{
    public static void Read(Desk desk, IReadOnlyList<VesselFacts> vessels, Living living, Warmth warmth)
    {
        var sun = desk.Try("sun", () => Sun(desk, warmth.Climate)!);
        foreach (var bed in vessels.Where(v => v.Planted is not null))
        {
            var lamps = desk.Try(bed.Vessel.Name, () => Lamps(desk, bed, vessels)!);
            if (lamps is not null)
            {
                lamps = desk.Name(lamps, $"light.{bed.Slug}.lamps", $"Daily light from lamps on {bed.Vessel.Name}", Units.MolePerSquareMetreDay);
            }
            var darkest = sun?.MinBy(s => s.Si);
            var total = (lamps, darkest) switch
            {
                ({ } l, { } s) => l + s,
                ({ } l, null) => l,
                (null, { } s) => s,
                _ => null,
            };
            if (total is null)
            {
                continue;
            }
            total = desk.Name(total, $"light.{bed.Slug}.darkest", $"Daily light on {bed.Vessel.Name} in the darkest month", Units.MolePerSquareMetreDay);
            foreach (var crop in living.Crops.Where(c => c.Kind is not null && c.Beds.Contains(bed)))
            {
                Judge(desk, bed, crop, total);
            }
        }
    }

    /// <summary>Daily light that the sun brings to the beds in each month, or null indoors or without a climate.</summary>
    private static List<Figure>? Sun(Desk desk, Climate? climate)
    {
        if (climate is null || desk.Plan.Place.Setting == Setting.Indoors)
        {
            return null;
        }
        var perMegajoule = desk.Take(Desk.Assumed("light/mol per MJ", "Photons in each megajoule of sun", 2.0, 2.06, 2.3, Units.MolePerMegajoule,
            "0.45 × 4.57 µmol/J, Thimijan & Heins 1983; sources give 2.0 to 2.3"));
        var months = new List<Figure>();
        for (var m = 0; m < 12; m++)
        {
            var outside = desk.Need(LightFormulas.Daylight, desk.Take(climate.Radiation[m]), perMegajoule);
            var inside = outside;
            if (desk.Plan.Place.Setting == Setting.Greenhouse)
            {
                var transmission = desk.Take(GlazingTransmission.Of(desk.Plan.Place.Cover?.Glazing ?? Glazing.SingleGlass));
                var shade = desk.Take(GlazingTransmission.Shade);
                inside = desk.Need(LightFormulas.DaylightUnderCover, outside, transmission, shade);
            }
            months.Add(desk.Name(inside, $"light.sun.month.{m + 1}", $"Daily light from the sun in {CalendarDay.MonthNames[m]}", Units.MolePerSquareMetreDay));
        }
        return months;
    }

    private static Figure? Lamps(Desk desk, VesselFacts bed, IReadOnlyList<VesselFacts> vessels)
    {
        var over = desk.Plan.Lamps.Values
            .Where(l => l.Over.Count == 0 || l.Over.Contains(bed.Vessel.Name, StringComparer.OrdinalIgnoreCase)).ToList();
        var light = new List<Figure>();
        foreach (var lamp in over)
        {
            var beds = vessels.Where(v => v.Planted is not null && (lamp.Over.Count == 0 || lamp.Over.Contains(v.Vessel.Name, StringComparer.OrdinalIgnoreCase))).ToList();
            var area = beds.Count == 1 ? bed.Planted! : Figure.Sum([.. beds.Select(b => b.Planted!)]).Called($"Area under {lamp.Name}", Units.SquareMetre);
            if (Photons(desk, lamp) is not { } one)
            {
                continue;
            }
            var all = (desk.Take(lamp.Count) * one).Called($"Photons of all {lamp.Name}", Units.MicromolePerSecond);
            if (desk.Apply(LightFormulas.PhotonFluxOnBed, all, desk.Take(lamp.Reaching), area) is { } flux
                && desk.Apply(LightFormulas.DailyLight, flux, desk.Take(lamp.Hours)) is { } daily)
            {
                light.Add(daily);
            }
        }
        return light.Count switch { 0 => null, 1 => light[0], _ => Figure.Sum([.. light]) };
    }

    /// <summary>Photons of one lamp: as stated, from its efficacy, from its lumens, or from what lamps of its kind usually give.</summary>
    internal static Figure? Photons(Desk desk, Lamp lamp)
    {
        if (lamp.Photons is { } stated)
        {
            return desk.Take(stated);
        }
        if (lamp.Efficacy is { } efficacy)
        {
            return desk.Apply(LightFormulas.PhotonsFromPower, desk.Take(lamp.Watts), desk.Take(efficacy));
        }
        if (lamp.Lumens is { } lumens)
        {
            return desk.Apply(LightFormulas.PhotonsFromLumens, desk.Take(lumens), desk.Take(LuxPerPhoton.Of(lamp.Kind, Colour(lamp))));
        }
        return desk.Apply(LightFormulas.PhotonsFromPower, desk.Take(lamp.Watts), desk.Take(TypicalEfficacy.Of(lamp.Kind)));
    }

    private static double? Colour(Lamp lamp)
    {
        var digits = new string([.. (lamp.Colour ?? "").Where(char.IsDigit)]);
        return digits.Length is > 2 and < 6 ? double.Parse(digits) : null;
    }

    private static void Judge(Desk desk, VesselFacts bed, CropFacts crop, Figure total)
    {
        var need = crop.Kind!.DailyLight;
        var least = new Amount(need.Low, Units.MolePerSquareMetreDay);
        var saw = new Amount(total.Si, Units.MolePerSquareMetreDay);
        if (total.Si < need.Low)
        {
            var share = total.Si / need.Low;
            desk.Say(new Finding(
                "light.too-little", share < 0.5 ? Severity.Grave : Severity.Warning, $"{crop.Crop.Name} in {bed.Vessel.Name}",
                Said.Of($"{saw} of light in the darkest month"), Said.Of($"at least {least}"),
                "Longer hours, more or better lamps, white side curtains so that more of the light reaches the leaves, or a crop that asks for less.",
                crop.Path, need.From.Source));
        }
        if (crop.Kind.LongestDay is { } longest
            && desk.Plan.Lamps.Values.Where(l => l.Over.Count == 0 || l.Over.Contains(bed.Vessel.Name, StringComparer.OrdinalIgnoreCase))
                .FirstOrDefault(l => l.Hours.Likely > longest.High + 1e-9) is { } lamp)
        {
            desk.Say(new Finding(
                "light.day-too-long", Severity.Warning, $"{crop.Crop.Name} in {bed.Vessel.Name}",
                Said.Of($"lit for {new Amount(lamp.Hours.Likely, Units.HoursPerDay)}"), Said.Of($"at most {new Amount(longest.High, Units.HoursPerDay)}"),
                "Shorten the lamp hours and make up with stronger light.", $"lamps/{lamp.Name}/hours", longest.From.Source));
        }
    }
}
