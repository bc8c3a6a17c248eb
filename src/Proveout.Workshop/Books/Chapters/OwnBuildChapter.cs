using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>The machine file, and how to start an own build from it.</summary>
internal sealed class OwnBuildChapter : IBookChapters
{
    public IEnumerable<BookChapter> Of(BookCase book)
    {
        var files = BookMachineFiles.Of(book.Planned.Machine);
        return
        [
            new(
                "own-build",
                "Start your own build",
                "The machine as data: from it Proveout computes every expectation of this book, and keeps the record of your build.",
                [
                    new BookHeading("The machine file"),
                    new BookDownloads([.. files.Files.Select(file => file.Name)]),
                    new BookText(files.Fingerprint == book.Planned.Machine.Fingerprint
                        ? $"Fingerprint: {files.Fingerprint}, the one that this book was made from."
                        : $"Fingerprint of these files: {files.Fingerprint}. The book tells of {book.Planned.Machine.Fingerprint}: of a stage of this machine, or of the same files under other names."),
                    new BookHeading("What to type"),
                    new BookText("In the folder of this book, with Proveout installed. First let it look the machine over, then start your build at the bench; put your own name and serial number in."),
                    new BookCommand($"proveout review {files.Place}"),
                    new BookCommand($"proveout bench {files.Place} --serial 1 --builder \"Your name\""),
                    new BookText("If a part of yours differs, change the file first: every expectation follows from it."),
                ]),
        ];
    }
}
