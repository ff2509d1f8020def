using Runnel.Engine.Figures;
using Runnel.Engine.Filter;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Engine.Volumes;

namespace Runnel.Engine.Assess;

/// <summary>One vessel of the plan, measured. Areas and volumes are of all vessels alike together.</summary>
internal sealed record VesselFacts(
    Vessel Vessel, string Slug, Figure Count, Figure Top, Figure Wetted, Figure Water, Figure? Media, Medium? Medium, Figure? Planted)
{
    public bool IsBed => Vessel.Role is VesselRole.MediaBed or VesselRole.RaftBed or VesselRole.Channel;
}

/// <summary>Volumes, water, media and planted area of every vessel.</summary>
internal static class Vessels
{
    private static readonly Source Geometry = Source.Definition("geometry");

    public static IReadOnlyList<VesselFacts> Measure(Desk desk)
    {
        var facts = new List<VesselFacts>();
        foreach (var vessel in desk.Plan.Vessels.Values)
        {
            if (desk.Try(vessel.Name, () => MeasureOne(desk, vessel)) is { } measured)
            {
                facts.Add(measured);
            }
        }
        var none = Figure.Constant(0, Units.Litre, "No water", Source.Definition("no vessel could be measured"));
        desk.Name(facts.Count == 0 ? none : Figure.Sum([.. facts.Select(f => f.Water)]), "water.total", "Water in the loop", Units.Litre);
        if (facts.Where(f => f.Planted is not null).Select(f => f.Planted!).ToList() is { Count: > 0 } planted)
        {
            desk.Name(Figure.Sum([.. planted]), "area.planted", "Planted area", Units.SquareMetre);
        }
        return facts;
    }

    private static VesselFacts MeasureOne(Desk desk, Vessel vessel)
    {
        var slug = desk.SlugOf("vessel", vessel.Name);
        var path = $"vessels/{vessel.Name}";
        var form = Form.Of(desk, vessel);
        var count = desk.Count(vessel.Count);
        var medium = FindMedium(desk, vessel, path);

        Figure? media = null;
        Figure depth;
        if (vessel.Role == VesselRole.MediaBed)
        {
            var deepest = Math.Min(0.30, form.Height.Si);
            var filled = vessel.MediaDepth is { } given
                ? desk.Take(given)
                : desk.Take(Desk.Assumed($"{path}/media depth", $"Depth of media, {vessel.Name}", deepest, deepest, deepest, Units.Metre,
                    "FAO Technical Paper 589 (2014), section 4.3: 30 cm (from memory)"));
            media = desk.Name(desk.Times(form.VolumeAt(Least(filled, form.Height)), count), $"vessel.{slug}.media", $"Media in {vessel.Name}", Units.Litre);
            depth = vessel.Level is { } level
                ? desk.Take(level)
                : (filled * Figure.Constant(80, Units.Percent, "Share of the bed flooded",
                    Source.Practice("water stops a few centimetres under the top of the media"))).Called($"Water level, {vessel.Name}", Units.Centimetre);
        }
        else
        {
            depth = vessel.Level is { } level
                ? desk.Take(level)
                : (form.Height * Figure.Constant(80, Units.Percent, "Share filled when no level is given", Source.Practice("a hand's breadth of free height")))
                    .Called($"Water level, {vessel.Name}", Units.Centimetre);
            if (vessel.MediaVolume is { } loose)
            {
                media = desk.Name(desk.Times(desk.Take(loose), count), $"vessel.{slug}.media", $"Media in {vessel.Name}", Units.Litre);
            }
        }

        var gross = form.VolumeAt(Least(depth, form.Height));
        var one = vessel.Role == VesselRole.MediaBed && medium is not null
            ? desk.Apply(VolumeFormulas.WaterInMedia, gross, desk.Take(medium.Voids)) ?? gross
            : gross;
        var water = desk.Name(desk.Times(one, count), $"vessel.{slug}.water", $"Water in {vessel.Name}", Units.Litre);
        var top = desk.Times(form.TopAt(depth), count).Called($"Open top of {vessel.Name}", Units.SquareMetre);
        var wetted = desk.Times(form.WettedAt(depth), count).Called($"Wetted wall and bottom of {vessel.Name}", Units.SquareMetre);

        Figure? planted = null;
        if (vessel.Role is VesselRole.MediaBed or VesselRole.RaftBed or VesselRole.Channel)
        {
            var area = vessel.PlantedArea is { } given ? desk.Times(desk.Take(given), count) : top;
            planted = desk.Name(area, $"vessel.{slug}.area", $"Planted area of {vessel.Name}", Units.SquareMetre);
        }
        return new(vessel, slug, count, top, wetted, water, media, medium, planted);
    }

    /// <summary>A depth, or the height of the vessel when that is less.</summary>
    private static Figure Least(Figure depth, Figure height) => depth.Si <= height.Si ? depth : Figure.Smallest(depth, height);

    private static Medium? FindMedium(Desk desk, Vessel vessel, string path)
    {
        if (vessel.Media is null)
        {
            if (vessel.Role == VesselRole.MediaBed)
            {
                desk.Say(Advice.NoMedia(vessel.Name, path));
            }
            return null;
        }
        var medium = Names.Find(desk.Shelf.Media, m => m.Name, m => m.AlsoCalled, vessel.Media);
        if (medium is null)
        {
            desk.Say(Advice.Unknown("media", vessel.Name, vessel.Media, $"{path}/media", desk.Shelf.Media.Select(m => m.Name)));
        }
        return medium;
    }

    /// <summary>How a vessel's volume, top and wetted wall follow from a depth of water.</summary>
    private sealed record Form(Figure Height, Func<Figure, Figure> VolumeAt, Func<Figure, Figure> TopAt, Func<Figure, Figure> WettedAt)
    {
        public static Form Of(Desk desk, Vessel vessel) => vessel.Shape switch
        {
            BoxShape box => Box(desk, desk.Take(box.Length), desk.Take(box.Width), desk.Take(box.Height)),
            RoundShape round => Round(desk, desk.Take(round.Diameter), desk.Take(round.Height)),
            DrumShape { Lengthwise: false } drum => Round(
                desk,
                desk.Need(VolumeFormulas.DrumDiameter, desk.Take(drum.Volume)), desk.Need(VolumeFormulas.DrumLength, desk.Take(drum.Volume))),
            DrumShape drum => Lying(
                desk,
                desk.Need(VolumeFormulas.DrumDiameter, desk.Take(drum.Volume)), desk.Need(VolumeFormulas.DrumLength, desk.Take(drum.Volume)), half: true),
            ToteShape tote => Box(
                desk,
                Figure.Constant(1.2, Units.Metre, "Length of a tote", Source.FromMemory("usual base of an intermediate bulk container, 1.2 m x 1.0 m")),
                Figure.Constant(1.0, Units.Metre, "Width of a tote", Source.FromMemory("usual base of an intermediate bulk container, 1.2 m x 1.0 m")),
                desk.Need(VolumeFormulas.ToteHeight, desk.Take(tote.Volume))),
            PipeShape pipe => Lying(desk, desk.Take(pipe.Diameter), desk.Take(pipe.Length), half: false),
            _ => throw new InvalidOperationException($"no geometry for {vessel.Shape.GetType().Name}"),
        };

        private static Form Box(Desk desk, Figure length, Figure width, Figure height) => new(
            height,
            depth => desk.Need(VolumeFormulas.BoxVolume, length, width, depth),
            _ => length * width,
            depth => length * width + Figure.Constant(2, Units.One, "Pairs of walls", Geometry) * (length + width) * depth);

        private static Form Round(Desk desk, Figure diameter, Figure height)
        {
            var pi = Figure.Constant(Math.PI, Units.One, "π", Geometry);
            var four = Figure.Constant(4, Units.One, "4", Geometry);
            return new(
                height,
                depth => desk.Need(VolumeFormulas.CylinderVolume, diameter, depth),
                _ => pi * diameter * diameter / four,
                depth => pi * diameter * diameter / four + pi * diameter * depth);
        }

        private static Form Lying(Desk desk, Figure diameter, Figure length, bool half)
        {
            var height = half
                ? (diameter / Figure.Constant(2, Units.One, "2", Geometry)).Called("Height of half a drum", Units.Centimetre)
                : diameter;
            return new(
                height,
                depth => desk.Need(VolumeFormulas.LyingCylinderVolume, diameter, length, depth),
                depth =>
                {
                    var (r, h) = (diameter.Si / 2, Math.Clamp(depth.Si, 0, diameter.Si));
                    var chord = 2 * Math.Sqrt(Math.Max(0, 2 * r * h - h * h));
                    return Figure.Computed(chord * length.Si, Units.SquareMetre, "Water surface",
                        "chord of the circle at that depth times the length", [diameter, length, depth], Geometry);
                },
                depth =>
                {
                    var (r, h) = (diameter.Si / 2, Math.Clamp(depth.Si, 0, diameter.Si));
                    var angle = 2 * Math.Acos(Math.Clamp((r - h) / r, -1, 1));
                    var ends = r * r * (angle - Math.Sin(angle));
                    return Figure.Computed(r * angle * length.Si + ends, Units.SquareMetre, "Wetted wall",
                        "wetted arc times the length, and both ends", [diameter, length, depth], Geometry);
                });
        }
    }
}
