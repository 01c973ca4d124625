package batchwright.cli.serve;

import batchwright.cli.Batchwright;
import batchwright.page.PageFiles;
import batchwright.page.PageServer;
import batchwright.page.WholePage;

/** Opens the page for a command line. Apart from the command, so that other commands load nothing of a server. */
final class OpenPage {
    private OpenPage() {}

    /** Serves until the program is ended. */
    static void untilEnded(int port, Batchwright program) throws InterruptedException {
        var files = new PageFiles(program.namedFolder(), program.here(), program.clock(), program.namedDay());
        try (PageServer server = WholePage.open(files, program.plans(), port, program::tell, fault -> tell(fault, program))) {
            program.tell("Open this address in a browser on this computer:\n" + server.address()
                    + "\nCtrl-C ends the page; nothing is lost.\n");
            Thread.currentThread().join();
        }
    }

    /** Of a fault only its kind: what it says might be about somebody's body. */
    private static void tell(Throwable fault, Batchwright program) {
        program.complain("a fault of ours: a page could not be shown (" + fault.getClass().getSimpleName() + ")\n");
    }
}
