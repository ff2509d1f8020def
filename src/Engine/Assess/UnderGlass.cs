using Runnel.Engine.Figures;
using Runnel.Engine.Heat;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>What the totals would be without lamps, under a roof of glass.</summary>
internal static class UnderGlass
{
    public static void Compare(Desk desk, Climate? weather)
    {
        var plan = desk.Plan;
        if (plan.Lamps.Count == 0)
        {
            return;
        }
        var moved = weather is not null || plan.Place.Climate is not null;
        var place = moved
            ? plan.Place with { Setting = Setting.Greenhouse, Cover = plan.Place.Cover ?? new Cover(), Air = [] }
            : plan.Place;
        var other = Assessor.Changed(desk, plan with { Lamps = new Dictionary<string, Lamp>(), Place = place }, weather);
        var how = moved
            ? "the plan assessed again without lamps, in a greenhouse of single glass in the same climate; the glass itself is not priced"
            : "the plan assessed again without lamps; it names no climate, so the room stays as it is";
        if (other.Findings.Any(f => f.Code == "heat.heater-too-small"))
        {
            how += "; the heater could not hold its temperature there, so a larger one would cost and use more";
        }
        Keep("build.total", "build.total.under-glass", "To build without lamps, under glass", desk.Currency);
        Keep("run.year.total", "run.year.total.under-glass", "To run for a year without lamps, under glass", desk.Currency);
        if (other.Figures.All.Where(f => f.Id!.StartsWith("light.", StringComparison.Ordinal) && f.Id.EndsWith(".darkest", StringComparison.Ordinal)).MinBy(f => f.Si) is { } light)
        {
            desk.Name(
                Figure.Computed(light.Si, Units.MolePerSquareMetreDay, "Light under glass", how, [light]),
                "light.darkest.under-glass", "Daily light in the darkest month without lamps, under glass", Units.MolePerSquareMetreDay);
        }

        void Keep(string of, string id, string label, Unit unit)
        {
            var figure = other.Figures[of];
            desk.Name(Figure.Computed(figure.Si, unit, label, how, [figure]), id, label, unit);
        }
    }
}
