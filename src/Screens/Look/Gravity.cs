using MudBlazor;
using Severity = Runnel.Engine.Findings.Severity;

namespace Runnel.Screens.Look;

/// <summary>Word, icon and style of each gravity: never colour alone.</summary>
public sealed record Gravity(string Word, string Meaning, string Icon, string Css)
{
    /// <summary>How a severity looks.</summary>
    public static Gravity Of(Severity severity) => severity switch
    {
        Severity.Grave => new("Serious", "Fish, people or the house may come to harm, or the loop cannot work", Icons.Material.Filled.Dangerous, "grave"),
        Severity.Warning => new("Warning", "Likely to disappoint or to cost", Icons.Material.Filled.Warning, "warning"),
        Severity.Note => new("Note", "Good to know: a caution or an assumption", Icons.Material.Filled.Info, "note"),
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, "unknown severity"),
    };

    /// <summary>"1 warning", "9 notes".</summary>
    public string Count(int number) => number == 1 || this is { Css: "grave" } ? $"{number} {Word.ToLowerInvariant()}" : $"{number} {Word.ToLowerInvariant()}s";
}
