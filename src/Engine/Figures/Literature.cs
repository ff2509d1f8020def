namespace Runnel.Engine.Figures;

/// <summary>Works that more than one formula rests on.</summary>
internal static class Literature
{
    public static readonly Source FaoRatios = new(
        "Somerville, Cohen, Pantanella, Stankus and Lovatelli 2014, Small-scale aquaponic food production, FAO Fisheries and Aquaculture "
        + "Technical Paper 589, section 8.1");

    public static readonly Source FaoAppendix4 = Source.FromMemory(
        "Somerville, Cohen, Pantanella, Stankus and Lovatelli 2014, Small-scale aquaponic food production, FAO Fisheries and Aquaculture "
        + "Technical Paper 589, appendix 4");

    public static readonly Source TimmonsEbeling = Source.FromMemory("Timmons and Ebeling 2013, Recirculating Aquaculture");

    public static readonly Source Kentucky = new(
        "Hager, Bright, Dusci and Tidwell 2021, Aquaponics Production Manual, Kentucky State University, section on feed");

    public static readonly Source UviTilapia = new(
        "Rakocy, Bailey, Shultz and Thoman 2004, Update on tilapia and vegetable production in the UVI aquaponic system, Sixth International "
        + "Symposium on Tilapia in Aquaculture");

    public static readonly Source RakocyGuidelines = new("Rakocy 2007, Ten guidelines for aquaponic systems, Aquaponics Journal 46");

    public static readonly Source Miller = new("Miller, Biofilter decisions, Florida A and M University extension slides");

    public static readonly Source Harwanto = new("Harwanto, Oh and Jo 2011, Fisheries and Aquatic Sciences 14, 363");

    public static readonly Source AtomicWeights = Source.Definition("standard atomic weights, IUPAC");
}
