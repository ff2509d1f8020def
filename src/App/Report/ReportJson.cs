using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Runnel.App.Report;

/// <summary>Reports as JSON: camel case, indented, what does not apply left out.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull, WriteIndented = true,
    GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(PlanReport))]
[JsonSerializable(typeof(WorkingTree))]
[JsonSerializable(typeof(FormularyReport))]
[JsonSerializable(typeof(FormulaReport))]
[JsonSerializable(typeof(SumReport))]
[JsonSerializable(typeof(ErrorReport))]
internal sealed partial class ReportContext : JsonSerializerContext;

/// <summary>Writes reports.</summary>
public static class ReportJson
{
    // Units such as °C and µmol stay readable; the text goes to a terminal or a file, never into a page.
    private static readonly ReportContext Context = new(new JsonSerializerOptions(ReportContext.Default.Options)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    public static string Write(PlanReport report) => JsonSerializer.Serialize(report, Context.PlanReport);

    public static string Write(WorkingTree tree) => JsonSerializer.Serialize(tree, Context.WorkingTree);

    public static string Write(FormularyReport report) => JsonSerializer.Serialize(report, Context.FormularyReport);

    public static string Write(FormulaReport report) => JsonSerializer.Serialize(report, Context.FormulaReport);

    public static string Write(SumReport report) => JsonSerializer.Serialize(report, Context.SumReport);

    public static string Write(ErrorReport report) => JsonSerializer.Serialize(report, Context.ErrorReport);
}
