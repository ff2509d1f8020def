using System.Runtime.CompilerServices;
using System.Text;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Findings;

/// <summary>A sentence that keeps its numbers as SI values with units until a host prints it.</summary>
/// <remarks>Written as an interpolated string: <c>Said.Of($"the water is kept at {new Amount(21, Units.Celsius)}")</c>.</remarks>
public sealed record Said(IReadOnlyList<object> Pieces)
{
    /// <summary>Nothing said.</summary>
    public static readonly Said Nothing = new([]);

    /// <summary>A sentence with amounts in it.</summary>
    public static Said Of(Builder text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new(text.Pieces);
    }

    /// <summary>A sentence without amounts.</summary>
    public static implicit operator Said(string text) => FromString(text);

    /// <summary>A sentence without amounts.</summary>
    public static Said FromString(string text) => new([text]);

    /// <summary>The sentence with each amount printed by the host's writer.</summary>
    public string Print(Func<Amount, string> write)
    {
        ArgumentNullException.ThrowIfNull(write);
        var text = new StringBuilder();
        foreach (var piece in Pieces)
        {
            text.Append(piece is Amount amount ? write(amount) : piece);
        }
        return text.ToString();
    }

    /// <summary>Collects the pieces of an interpolated sentence.</summary>
    [InterpolatedStringHandler]
    public sealed class Builder(int literalLength, int formattedCount)
    {
        private readonly List<object> _pieces = new(formattedCount * 2 + (literalLength > 0 ? 1 : 0));

        internal IReadOnlyList<object> Pieces => _pieces;

        public void AppendLiteral(string text) => _pieces.Add(text);

        public void AppendFormatted(Amount amount) => _pieces.Add(amount);

        public void AppendFormatted(string? text) => _pieces.Add(text ?? "");

        public void AppendFormatted(int count) => _pieces.Add(count.ToString());
    }
}
