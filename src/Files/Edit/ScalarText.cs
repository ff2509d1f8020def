using System.Globalization;
using System.Text;
using Runnel.Files.Yaml;

namespace Runnel.Files.Edit;

/// <summary>Writes one value as YAML, in quotes only where it must be.</summary>
internal static class ScalarText
{
    private const string Indicators = "-?:,[]{}#&*!|>'\"%@`";

    public static string Write(string value, bool inFlow, ScalarLook look = ScalarLook.Plain)
    {
        if (look == ScalarLook.SingleQuoted && !value.Any(char.IsControl))
        {
            return $"'{value.Replace("'", "''", StringComparison.Ordinal)}'";
        }
        return look != ScalarLook.DoubleQuoted && IsPlain(value, inFlow) ? value : Quote(value);
    }

    private static bool IsPlain(string value, bool inFlow)
    {
        if (value.Length == 0 || char.IsWhiteSpace(value[0]) || char.IsWhiteSpace(value[^1]) || value.Any(c => char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF'))
        {
            return false;
        }
        if (Indicators.Contains(value[0], StringComparison.Ordinal) && !(value[0] is '-' or '?' && value.Length > 1 && !char.IsWhiteSpace(value[1])))
        {
            return false;
        }
        if (value.StartsWith("---", StringComparison.Ordinal) || value.StartsWith("...", StringComparison.Ordinal) || value.EndsWith(':') ||
            value.Contains(": ", StringComparison.Ordinal) || value.Contains(" #", StringComparison.Ordinal))
        {
            return false;
        }
        return !inFlow || value.AsSpan().IndexOfAny(",[]{}") < 0 && !value.Contains(':', StringComparison.Ordinal);
    }

    private static string Quote(string value)
    {
        var quoted = new StringBuilder("\"");
        foreach (var c in value)
        {
            quoted.Append(c switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                '\n' => "\\n",
                '\r' => "\\r",
                '\t' => "\\t",
                _ when char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF' => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}"),
                _ => c.ToString(),
            });
        }
        return quoted.Append('"').ToString();
    }
}
