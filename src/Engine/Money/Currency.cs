namespace Runnel.Engine.Money;

/// <summary>The codes of ISO 4217 for money in use, with the digits after the point.</summary>
/// <remarks>From memory of the standard's list one (active codes); funds, metals and testing codes are left out. Not checked against a copy.</remarks>
public static class Currency
{
    private const string TwoDigits =
        "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP CRC CUP CVE CZK " +
        "DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT " +
        "LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN " +
        "QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS " +
        "VED VES WST XCD XCG YER ZAR ZMW ZWG";

    private const string NoDigits = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF";

    private const string ThreeDigits = "BHD IQD JOD KWD LYD OMR TND";

    private static readonly Dictionary<string, int> Digits = Build();

    /// <summary>Every code, in order of the alphabet.</summary>
    public static IReadOnlyList<string> Codes { get; } = [.. Digits.Keys.Order(StringComparer.Ordinal)];

    /// <summary>True for a code of money in use, in capitals.</summary>
    public static bool IsKnown(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        return Digits.ContainsKey(code);
    }

    /// <summary>Digits after the point: 2 for EUR, 0 for JPY, 3 for KWD; 2 for an unknown code.</summary>
    public static int MinorDigits(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        return Digits.GetValueOrDefault(code, 2);
    }

    private static Dictionary<string, int> Build()
    {
        var digits = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (codes, count) in new[] { (TwoDigits, 2), (NoDigits, 0), (ThreeDigits, 3) })
        {
            foreach (var code in codes.Split(' '))
            {
                digits.Add(code, count);
            }
        }
        return digits;
    }
}
