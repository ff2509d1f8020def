using Runnel.Engine.Plan;
using Runnel.Files.Errors;
using Runnel.Files.Values;
using Runnel.Files.Yaml;

namespace Runnel.Files.Binding;

/// <summary>Vessels: one may be like another.</summary>
internal sealed partial class Binder
{
    private Dictionary<string, Vessel> Vessels(MapNode map, Site at)
    {
        var bound = new Dictionary<string, Vessel>(StringComparer.Ordinal);
        var open = new HashSet<string>(StringComparer.Ordinal);
        var info = PartInfo.Of<Vessel>();
        var names = map.Entries.Select(e => e.Key.Value).ToList();

        Vessel? Bind(MapEntry entry)
        {
            var name = entry.Key.Value;
            if (bound.TryGetValue(name, out var known))
            {
                return known;
            }
            var site = at.Below(name, entry.Key.Start, name);
            if (entry.Value is not MapNode part)
            {
                Error(entry.Value.Start, site, entry.Value is ScalarNode s ? s.Value : "", new("keys and values of a vessel were expected", "write role: and shape: below its name"));
                return null;
            }
            Vessel? like = null;
            var incomplete = false;
            if (part["like"] is ScalarNode { IsEmpty: false } other)
            {
                open.Add(name);
                var original = map.Find(other.Value);
                var where = site.Below("like", other.Start, "");
                if (original is null)
                {
                    Error(other.Start, where, other.Value, new("there is no vessel of that name", names.Count == 1 ? "write the vessel out in full" : Nearest.Mend(other.Value, [.. names.Where(n => n != name)], "vessels here are")));
                }
                else if (open.Contains(other.Value))
                {
                    Error(other.Start, where, other.Value, new(other.Value == name ? "a vessel cannot be like itself" : "these vessels are like each other in a ring",
                        "write one of them out in full"));
                }
                else
                {
                    like = Bind(original);
                }
                incomplete = like is null;
                open.Remove(name);
            }
            var vessel = (Vessel)Part(info, part, site, name, like, incomplete);
            bound[name] = vessel;
            Check(vessel, part, site);
            return vessel;
        }

        foreach (var entry in map.Entries)
        {
            Bind(entry);
        }
        // In the order of the file, whichever was read first.
        return names.Distinct(StringComparer.Ordinal).Where(bound.ContainsKey).ToDictionary(n => n, n => bound[n], StringComparer.Ordinal);
    }

    private void Check(Vessel vessel, MapNode part, Site site)
    {
        var height = vessel.Shape switch
        {
            BoxShape box => box.Height,
            RoundShape round => round.Height,
            PipeShape pipe => pipe.Diameter,
            _ => null,
        };
        if (height is null)
        {
            return;
        }
        foreach (var (key, depth) in new[] { ("level", vessel.Level), ("media depth", vessel.MediaDepth), ("drain", vessel.Drain?.Height) })
        {
            if (depth is not null && depth.High > height.High * (1 + 1e-9) && part.Find(key) is { Value: ScalarNode written })
            {
                Error(written.Start, site.Below(key, written.Start, ""), written.Value,
                    new($"that is above the rim: the vessel is {Hints.Number(height.Unit.FromSi(height.Likely))} {height.Unit.Symbol} high inside", "check the level and the shape"));
            }
            else if (depth is not null && depth.High > height.High * (1 + 1e-9) && part.Find("shape") is { Value: ScalarNode shape })
            {
                Error(shape.Start, site.Below("shape", shape.Start, ""), shape.Value,
                    new($"the {key} taken over from {vessel.Like}, {Hints.Number(depth.Unit.FromSi(depth.Likely))} {depth.Unit.Symbol}, is above this rim", $"write {key}: for this vessel"));
            }
        }
    }
}
