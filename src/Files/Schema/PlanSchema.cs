using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Runnel.Engine.Plan;
using Runnel.Files.Binding;
using Runnel.Files.Values;

namespace Runnel.Files;

/// <summary>The format of plans as a JSON Schema (draft 2020-12), for editors that complete and check YAML while it is typed.</summary>
/// <remarks>It knows keys, words and bounds of bare numbers; units, names and sums are checked only by <see cref="PlanFile"/>.</remarks>
public static class PlanSchema
{
    private static readonly JsonSerializerOptions Look = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The text of the schema.</summary>
    public static string Json()
    {
        var parts = PartInfo.All();
        var root = Part(parts[0]);
        var schema = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema" };
        foreach (var (key, value) in root.ToList())
        {
            root.Remove(key);
            schema[key] = value;
        }
        var definitions = new JsonObject();
        foreach (var part in parts.Skip(1))
        {
            definitions[Name(part)] = Part(part);
        }
        schema["$defs"] = definitions;
        return schema.ToJsonString(Look) + "\n";
    }

    private static string Name(PartInfo part) => part.Title.ToLowerInvariant().Replace(' ', '-');

    private static JsonObject Part(PartInfo part)
    {
        var properties = new JsonObject();
        foreach (var input in part.Inputs)
        {
            properties[input.Key] = Input(input);
        }
        var schema = new JsonObject { ["title"] = part.Title };
        if (part.Help.Length > 0)
        {
            schema["description"] = part.Help;
        }
        schema["type"] = "object";
        schema["properties"] = properties;
        schema["additionalProperties"] = false;
        var required = new JsonArray([.. part.Inputs.Where(i => i.Input.Required).Select(i => (JsonNode)i.Key)]);
        if (required.Count == 0)
        {
            return schema;
        }
        if (part.Type == typeof(Vessel))
        {
            // A vessel that is like another may leave everything else out.
            schema["anyOf"] = new JsonArray(new JsonObject { ["required"] = new JsonArray("like") }, new JsonObject { ["required"] = required });
        }
        else if (part.Type == typeof(Price))
        {
            schema["anyOf"] = new JsonArray(new JsonObject { ["required"] = required },
                new JsonObject { ["required"] = new JsonArray("condition"), ["properties"] = new JsonObject { ["condition"] = new JsonObject { ["const"] = "owned" } } });
        }
        else
        {
            schema["required"] = required;
        }
        return schema;
    }

    private static JsonObject Input(InputInfo input)
    {
        var schema = Shape(input);
        var described = new JsonObject { ["title"] = input.Input.Label };
        var help = PlanFormatPage.Describe(input);
        if (help.Length > 0)
        {
            described["description"] = help;
        }
        if (input.Input.Example is { } example && input.IsScalar)
        {
            described["examples"] = new JsonArray(example);
        }
        foreach (var (key, value) in schema.ToList())
        {
            schema.Remove(key);
            described[key] = value;
        }
        return described;
    }

    private static JsonObject Shape(InputInfo input)
    {
        switch (input.Kind)
        {
            case InputKind.Quantity:
                return Number(input);
            case InputKind.Quantities:
                var values = Number(input);
                return new() { ["anyOf"] = new JsonArray(values, new JsonObject { ["type"] = "array", ["items"] = values.DeepClone(), ["minItems"] = 1, ["maxItems"] = 12 }) };
            case InputKind.QuantityMap:
                var map = new JsonObject { ["type"] = "object", ["additionalProperties"] = Number(input) };
                if (input.Key == "exchange")
                {
                    map["propertyNames"] = new JsonObject { ["pattern"] = "^[A-Z]{3}$" };
                }
                return map;
            case InputKind.Word:
                return new() { ["enum"] = new JsonArray([.. WordText.Of(input.Element).Select(w => (JsonNode)w.Word)]) };
            case InputKind.YesNo:
                return new() { ["enum"] = new JsonArray("yes", "no", true, false) };
            case InputKind.Whole:
                return new() { ["type"] = "integer", ["minimum"] = input.Input.Min, ["maximum"] = input.Input.Max };
            case InputKind.Text when input.Key == "currency":
                return new() { ["type"] = "string", ["pattern"] = "^[A-Z]{3}$" };
            case InputKind.Text:
                return new() { ["type"] = new JsonArray("string", "number") };
            case InputKind.Texts:
                return new() { ["anyOf"] = new JsonArray(Text(), new JsonObject { ["type"] = "array", ["items"] = Text(), ["minItems"] = 1 }) };
            case InputKind.Curve:
                return new() { ["type"] = "array", ["items"] = Text(), ["minItems"] = 2 };
            case InputKind.Part:
                return new() { ["$ref"] = Reference(input) };
            case InputKind.PartMap when input.Element == typeof(Price):
                return new() { ["type"] = "object", ["additionalProperties"] = new JsonObject { ["anyOf"] = new JsonArray(Any(), new JsonObject { ["$ref"] = Reference(input) }) } };
            case InputKind.PartMap:
                return new() { ["type"] = "object", ["additionalProperties"] = new JsonObject { ["$ref"] = Reference(input) } };
            case InputKind.PartList when input.Element == typeof(Rate):
                var rate = new JsonObject { ["anyOf"] = new JsonArray(Any(), new JsonObject { ["$ref"] = Reference(input) }) };
                return new() { ["anyOf"] = new JsonArray(Any(), new JsonObject { ["$ref"] = Reference(input) }, new JsonObject { ["type"] = "array", ["items"] = rate, ["minItems"] = 1 }) };
            case InputKind.PartList:
                return new() { ["type"] = "array", ["items"] = new JsonObject { ["$ref"] = Reference(input) } };
            default:
                return Text();
        }
    }

    private static string Reference(InputInfo input) => $"#/$defs/{Name(PartInfo.Of(input.Element))}";

    private static JsonObject Text() => new() { ["type"] = "string" };

    private static JsonObject Any() => new() { ["type"] = new JsonArray("string", "number") };

    // Bounds of a schema hold for numbers alone; a quantity with a unit is text.
    private static JsonObject Number(InputInfo input)
    {
        var schema = Any();
        if (double.IsFinite(input.Input.Min))
        {
            schema["minimum"] = input.Input.Min;
        }
        if (double.IsFinite(input.Input.Max))
        {
            schema["maximum"] = input.Input.Max;
        }
        return schema;
    }
}
