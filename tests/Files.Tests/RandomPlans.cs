using System.Globalization;
using System.Reflection;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Files.Tests;

/// <summary>Random plans that are right, made from the plan's own description, as JSON text, which is YAML too.</summary>
internal sealed class RandomPlans
{
    private static readonly string[] Names =
        ["tank", "bed one", "3/4 in hose", "a: b", "yes", "#1", "big, blue", "Ünï", "- x", "it's", "null", "1.5", "@home", "{x}", "\"q\"", "trailing:", "x #y", "~", "water / main", "🐟 tank"];

    private static readonly Dictionary<string, string[]> Other = new()
    {
        ["cm"] = ["in", "m", "mm"],
        ["m"] = ["ft", "cm"],
        ["L/h"] = ["gal/h", "L/min"],
        ["W"] = ["kW"],
        ["g"] = ["oz", "kg"],
        ["°C"] = ["°C", "°F"],
        ["year"] = ["months", "weeks"],
        ["money"] = ["EUR", "USD", "cents"],
        ["money/kWh"] = ["EUR per kWh", "cents per kWh", "USD/kWh"],
    };

    private readonly Random random;
    private readonly List<string> vessels;
    private readonly List<string> pumps;

    private RandomPlans(int seed)
    {
        random = new(seed);
        vessels = Pick(random.Next(1, 5));
        pumps = Pick(random.Next(1, 3));
    }

    /// <summary>Generator of texts.</summary>
    public static Gen<string> Texts { get; } = Gen.Int[0, int.MaxValue - 1].Select(seed => new RandomPlans(seed).Text());

    private string Text()
    {
        var plan = Part(typeof(LoopPlan));
        plan["pumps"] ??= new JsonObject(pumps.Select(p => KeyValuePair.Create(p, (JsonNode?)new JsonObject { ["watts"] = 9 })));
        plan["runnel"] = 1;
        plan["currency"] = "EUR";
        plan["exchange"] = new JsonObject { ["USD"] = "0.92" };
        plan["year"] = random.Next(1900, 2200);
        plan.Remove("price list");
        return plan.ToJsonString(new() { WriteIndented = random.Next(2) == 0, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, MaxDepth = 64 });
    }

    private JsonObject Part(Type type)
    {
        var part = new JsonObject();
        foreach (var property in type.GetProperties())
        {
            if (property.GetCustomAttribute<InputAttribute>() is { } input && input.Key != "like" && (input.Required || random.Next(2) == 0) && Value(property, input) is { } value)
            {
                part[input.Key] = value;
            }
        }
        if (type == typeof(Rate))
        {
            Rate(part);
        }
        return part;
    }

    private void Rate(JsonObject part)
    {
        if (part["from"] is null != part["to"] is null)
        {
            (part["from"], part["to"]) = ("1 May", "30 September");
        }
        part.Remove(part["blocks"] is null ? "blocks" : "price");
        if (part["blocks"] is not JsonArray blocks)
        {
            part["price"] ??= "0.3 EUR per kWh";
            return;
        }
        for (var i = 0; i < blocks.Count; i++)
        {
            blocks[i]!["up to"] = $"{100 * (i + 1)} kWh";
        }
        ((JsonObject)blocks[^1]!).Remove("up to");
    }

    private JsonNode? Value(PropertyInfo property, InputAttribute input)
    {
        var type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyDictionary<,>))
        {
            return Map(type.GetGenericArguments()[1], input);
        }
        if (type.IsGenericType)
        {
            return List(type.GetGenericArguments()[0], input);
        }
        if (type.GetCustomAttribute<PlanPartAttribute>() is not null)
        {
            return Part(type);
        }
        return type.IsEnum ? Word(type) : type.Name switch
        {
            nameof(Estimate) => Quantity(input),
            nameof(String) => Text(input),
            nameof(Int32) => random.Next(1900, 2200),
            nameof(Boolean) => random.Next(2) == 0 ? "yes" : "no",
            nameof(TimeOnly) => $"{random.Next(24):00}:{random.Next(60):00}",
            nameof(DateOnly) => $"{random.Next(1990, 2040)}-{random.Next(1, 13):00}-{random.Next(1, 29):00}",
            nameof(CalendarDay) => $"{random.Next(1, 29)} {CalendarDay.MonthNames[random.Next(12)]}",
            nameof(HourSpan) => $"{random.Next(12):00}:30 to {random.Next(12, 24)}:00",
            nameof(Extent) => $"{random.Next(1, 9)}.5 m x {random.Next(5, 20)} ft",
            nameof(Shape) => Shape(),
            nameof(Insulation) => $"{random.Next(5, 90)} mm {new[] { "EPS", "XPS", "polyiso", "fibreglass" }[random.Next(4)]}",
            nameof(DrainSpec) => new[] { "siphon, 32 mm standpipe, 22 cm high", "standpipe, 2 in, 4 in high", "siphon", "none", "standpipe with holes, 6 to 9 cm high, likely 7 cm" }[random.Next(5)],
            nameof(PipeSize) => new[] { "25 mm PVC", "3/4 in hose", "1 1/2 in PVC" }[random.Next(3)],
            _ => throw new InvalidOperationException(type.Name),
        };
    }

    private JsonNode? Map(Type element, InputAttribute input)
    {
        var map = new JsonObject();
        var names = input.Key switch { "vessels" => vessels, "pumps" => pumps, _ => Pick(random.Next(0, 4)) };
        foreach (var name in names)
        {
            map[name] = element == typeof(Estimate) ? Quantity(input) : element == typeof(Price) && random.Next(2) == 0 ? Price() : Part(element);
        }
        return map;
    }

    private JsonNode? List(Type element, InputAttribute input)
    {
        if (element == typeof(Estimate))
        {
            return new JsonArray([.. Enumerable.Range(0, random.Next(2) == 0 ? 1 : 12).Select(_ => (JsonNode)Quantity(input))]);
        }
        if (element == typeof(string))
        {
            var names = vessels.OrderBy(_ => random.Next()).Take(random.Next(1, vessels.Count + 1)).ToList();
            return names.Count == 1 && random.Next(2) == 0 ? names[0] : new JsonArray([.. names.Select(n => (JsonNode)n)]);
        }
        if (element == typeof(CurvePoint))
        {
            return new JsonArray("0 m at 2400 L/h", "5 to 6 ft at 100 gal/h", "2.6 m at 0 L/h");
        }
        return new JsonArray([.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => (JsonNode)Part(element))]);
    }

    private string Text(InputAttribute input) => input.Key switch
    {
        "pumped by" => pumps[random.Next(pumps.Count)],
        "lives in" => vessels[random.Next(vessels.Count)],
        "note" => "two\nlines: # and \"more\"\n",
        "size" when random.Next(4) > 0 => new[] { "2x4", "2x12", "6x6", "1x4", "45 x 90 mm", "600 x 600 mm", "35 x 36 mm" }[random.Next(7)],
        _ => Names[random.Next(Names.Length)],
    };

    private string Word(Type type)
    {
        var name = Enum.GetNames(type)[random.Next(Enum.GetNames(type).Length)];
        return string.Concat(name.Select((c, i) => char.IsUpper(c) && i > 0 ? $" {char.ToLowerInvariant(c)}" : char.ToLowerInvariant(c).ToString()));
    }

    private string Quantity(InputAttribute input)
    {
        var (min, max) = (Math.Max(input.Min, 0), Math.Min(input.Max, 1000));
        double Number() => Math.Round(min + random.NextDouble() * (max - min), random.Next(1, 4));
        static string Say(double v) => v.ToString(CultureInfo.InvariantCulture);
        var (a, b) = (Number(), Number());
        (a, b) = (Math.Clamp(Math.Min(a, b), input.Min, input.Max), Math.Clamp(Math.Max(a, b), input.Min, input.Max));
        if (input.Unit is null)
        {
            return input.Key == "per" ? new[] { "1", "50 L", "1 yd3", "4 m", "12" }[random.Next(5)] : $"{Say(a)} {new[] { "", "m", "g", "L", "m2", "gal" }[random.Next(6)]}".Trim();
        }
        var unit = input.Unit switch { "money" or "money/kWh" or "money/m³" or "money/month" or "money/h" or "" or "°" => "", "mg CaCO3/L" => "mg/L as CaCO3", var u => u };
        // Other units are for small numbers: they must stay within the bounds of the input.
        if (Other.TryGetValue(input.Unit, out var others) && random.Next(3) == 0 && input.Max > 30)
        {
            var middle = input.Unit switch { "°C" => 20, "year" => 3, "W" => 2, _ => Math.Max(2, input.Min) };
            unit = others[random.Next(others.Length)];
            a = unit switch { "°F" => 68, "months" => 20, "weeks" => 90, "in" => 3, "kW" => 0.02, "kg" => 1, "oz" => 9, "gal/h" => 20, "L/min" => 3, "m" => 1, "mm" => 90, "cm" => 90, "ft" => 9, _ => middle };
            b = a * 1.3;
        }
        var suffix = unit.Length == 0 ? "" : $" {unit}";
        return random.Next(3) switch
        {
            0 => $"{Say(a)} to {Say(b)}{suffix}",
            1 => $"{Say(a)} to {Say(b)}{suffix}, likely {Say(Math.Clamp(Math.Round(a + (b - a) / 3, 3), a, b))}{suffix}",
            _ => $"{Say(a)}{suffix}",
        };
    }

    private string Shape() => new[]
    {
        "box 110 x 70 x 600 cm", "round 120 cm x 8 m", "drum 55 gal upright", "drum 208 L lengthwise", "tote 1000 L", "pipe 600 cm x 2 m", "box 4 ft x 2 ft x 30 to 33 ft",
    }[random.Next(7)];

    private string Price() => new[]
    {
        "60 to 90 EUR, likely 70, used, seen 2026-10-02, at the yard", "22 to 30 EUR per 50 L", "4 USD per m", "owned", "90 EUR per yd3, whole packs", "12", "3 EUR per 100, loose, at a b", "28 cents per kg",
    }[random.Next(8)];

    private List<string> Pick(int count) => [.. Names.OrderBy(_ => random.Next()).Take(count)];
}
