namespace Runnel.Catalogue;

/// <summary>A data file of the catalogue is wrong. The files are part of the program, so this is a programmer's error.</summary>
public sealed class CatalogueException : Exception
{
    public CatalogueException(string message)
        : base(message)
    {
    }

    public CatalogueException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    public CatalogueException()
    {
    }
}
