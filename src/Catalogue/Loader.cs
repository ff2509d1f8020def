using System.Reflection;
using Runnel.Engine.Assess;
using Runnel.Engine.Crops;
using Runnel.Engine.Filter;
using Runnel.Engine.Fish;
using Runnel.Engine.Heat;
using Runnel.Engine.Quantities;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Runnel.Catalogue;

/// <summary>Turns the text of a data file into rows, and refuses it whole when anything in it is wrong.</summary>
public static class Loader
{
    private static readonly Dictionary<string, double> AirUnits = new(StringComparer.Ordinal) { ["°C"] = 1 };

    private static readonly Dictionary<string, double> RadiationUnits = new(StringComparer.Ordinal) { ["MJ/m²/d"] = 1, ["kWh/m²/d"] = 3.6 };

    /// <summary>Fish, from the text of a data file.</summary>
    /// <exception cref="CatalogueException">The text is wrong; the message names file, row and line.</exception>
    public static IReadOnlyList<Species> Species(string file, string text) => Read(file, "species", text, Species, s => s.Name, s => s.AlsoCalled);

    /// <summary>Crops, from the text of a data file.</summary>
    /// <inheritdoc cref="Species(string, string)" path="/exception" />
    public static IReadOnlyList<CropKind> Crops(string file, string text) => Read(file, "crops", text, Crop, c => c.Name, c => c.AlsoCalled);

    /// <summary>Bed and filter media, from the text of a data file.</summary>
    /// <inheritdoc cref="Species(string, string)" path="/exception" />
    public static IReadOnlyList<Medium> Media(string file, string text) => Read(file, "media", text, Medium, m => m.Name, m => m.AlsoCalled);

    /// <summary>Climates, from the text of a data file.</summary>
    /// <inheritdoc cref="Species(string, string)" path="/exception" />
    public static IReadOnlyList<Climate> Climates(string file, string text) => Read(file, "climates", text, Climate, c => c.Name, c => c.AlsoCalled);

    /// <summary>Substitutes, from the text of a data file.</summary>
    /// <inheritdoc cref="Species(string, string)" path="/exception" />
    public static IReadOnlyList<Substitute> Substitutes(string file, string text) => Read(file, "substitutes", text, Substitute, s => $"{s.Of} by {s.Use}", _ => [], "of");

    /// <summary>The text of a data file that is part of this assembly.</summary>
    internal static string Text(string file)
    {
        var assembly = Assembly.GetExecutingAssembly();
        using var stream = assembly.GetManifestResourceStream($"{assembly.GetName().Name}.data.{file}")
            ?? throw new CatalogueException($"{file} is not part of the program");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private static List<T> Read<T>(
        string file, string kind, string text, Func<Row, T> make, Func<T, string> name, Func<T, IReadOnlyList<string>> also,
        string nameKey = "name")
    {
        var yaml = new YamlStream();
        try
        {
            yaml.Load(new StringReader(text));
        }
        catch (YamlException e)
        {
            throw new CatalogueException($"{file}, line {e.Start.Line}: {e.InnerException?.Message ?? e.Message}", e);
        }
        if (yaml.Documents is not [{ RootNode: YamlSequenceNode list }])
        {
            throw new CatalogueException($"{file} is not one list of rows");
        }
        var rows = new List<T>();
        var names = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var node in list.Children)
        {
            var row = new Row(file, kind, node, rows.Count + 1, nameKey);
            var made = make(row);
            row.Done();
            foreach (var n in also(made).Prepend(name(made)))
            {
                if (!names.TryAdd(n, row.Name))
                {
                    throw row.Wrong($"\"{n}\" is already a name of {names[n]}");
                }
            }
            rows.Add(made);
        }
        return rows;
    }

    private static Species Species(Row row)
    {
        var fish = new Species
        {
            Name = row.Name,
            Scientific = row.Text("scientific"),
            AlsoCalled = row.Texts("also called"),
            Food = row.Flag("food"),
            Survives = row.Estimate("survives", $"Water temperature {row.Name} survives", Units.Celsius, -2, 45),
            Thrives = row.Estimate("thrives", $"Water temperature at which {row.Name} grows best", Units.Celsius, -2, 45),
            StopsFeedingBelow = row.EstimateOrNull("stops feeding below", $"Water temperature under which {row.Name} stops feeding", Units.Celsius, 0, 30),
            Oxygen = row.Estimate("oxygen", $"Least dissolved oxygen for {row.Name}", Units.MilligramPerLitre, 1, 10),
            Ammonia = row.Estimate("ammonia", $"Most total ammonia nitrogen for {row.Name}", Units.MilligramNitrogenPerLitre, 0.05, 10),
            Protein = row.Estimate("protein", $"Protein in grow-out feed for {row.Name}", Units.Percent, 15, 60),
            Ration = row.Estimate("ration", $"Feed each day, share of body weight, {row.Name}", Units.PercentPerDay, 0.2, 15),
            FeedConversion = row.Estimate("feed conversion", $"Feed for each kg of {row.Name} gained", Units.One, 0.7, 4),
            Growth = row.Estimate("growth", $"Thermal growth coefficient of {row.Name}", Units.One, 0.01, 0.4),
            Caution = row.Text("caution"),
        };
        row.Inside(fish.Thrives, fish.Survives);
        return fish;
    }

    private static CropKind Crop(Row row)
    {
        var crop = new CropKind
        {
            Name = row.Name,
            AlsoCalled = row.Texts("also called"),
            Fruiting = row.Flag("fruiting"),
            DailyLight = row.Estimate("daily light", $"Light {row.Name} needs each day", Units.MolePerSquareMetreDay, 1, 60),
            Thrives = row.Estimate("thrives", $"Temperature {row.Name} does well in", Units.Celsius, -5, 45),
            Survives = row.Estimate("survives", $"Temperature {row.Name} survives", Units.Celsius, -5, 45),
            Spacing = row.Estimate("spacing", $"Plants of {row.Name} for each square metre", Units.PerSquareMetre, 0.5, 500),
            DaysInBed = row.Estimate("days in bed", $"Days in the bed until {row.Name} is picked", Units.DayUnit, 5, 365),
            LongestDay = row.EstimateOrNull("longest day", $"Longest day in light {row.Name} takes", Units.HoursPerDay, 8, 24),
            Picking = row.Text("picked") switch
            {
                "whole" => Picking.Whole,
                "cut" => Picking.Cut,
                "fruit" => Picking.Fruit,
                var other => throw row.Wrong($"picked is none of whole, cut and fruit but \"{other}\""),
            },
            DryMatter = row.Estimate("dry matter", $"Dry matter of {row.Name}", Units.Percent, 2, 40),
            Nitrogen = row.Estimate("nitrogen", $"Nitrogen in dry {row.Name}", Units.Percent, 1, 9),
            DryMassWhenPicked = row.Estimate("dry mass when picked", $"Dry mass of {row.Name} when picked", Units.KilogramPerSquareMetre, 0.02, 2),
            Stays = row.Estimate("stays", $"Days until {row.Name} is cleared", Units.DayUnit, 20, 730),
            LeafArea = row.Estimate("leaf area", $"Leaf on each kg of dry {row.Name}", Units.SquareMetrePerKilogram, 3, 100),
            FruitShare = row.EstimateOrNull("fruit share", $"Share of new dry mass that goes into fruit, {row.Name}", Units.Percent, 5, 80),
        };
        if ((crop.Picking == Picking.Fruit) != (crop.FruitShare is not null))
        {
            throw row.Wrong("needs a fruit share if it is picked for fruit, and none if not");
        }
        row.Inside(crop.Thrives, crop.Survives);
        return crop;
    }

    private static Medium Medium(Row row) => new()
    {
        Name = row.Name,
        AlsoCalled = row.Texts("also called"),
        Surface = row.Estimate("surface", $"Surface for bacteria, {row.Name}", Units.SquareMetrePerCubicMetre, 10, 10000),
        Voids = row.Estimate("voids", $"Share of voids, {row.Name}", Units.Percent, 20, 95),
        Density = row.Estimate("density", $"Bulk density dry, {row.Name}", Units.KilogramPerCubicMetre, 20, 2200),
        Caution = row.Text("caution"),
    };

    private static Climate Climate(Row row)
    {
        var source = row.Text("source");
        return new()
        {
            Name = row.Name,
            AlsoCalled = row.Texts("also called"),
            Source = source,
            Latitude = row.Number("latitude", -90, 90),
            Air = row.Year("air", $"Mean air temperature, {row.Name},", Units.Celsius, AirUnits, source, -60, 50),
            Radiation = row.Year("radiation", $"Daily sun on the level, {row.Name},", Units.MegajoulePerSquareMetreDay, RadiationUnits, source, 0, 45),
        };
    }

    private static Substitute Substitute(Row row) =>
        new(row.Text("of"), row.Text("use"), row.Text("gives up"), row.Text("source"));
}
