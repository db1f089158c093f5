; What the lemma takes for given, together with the opposite of what it claims. There is no such
; state: the lemma holds.
;
; Of 3 devices, any two of which may be linked. proofs/quiet-events.md of cairn tells the lemma,
; with a proof by hand for every number of devices. Written by proofs/generate, from the formulas
; that cairn proves with.
(set-info :smt-lib-version 2.6)
(set-logic QF_UF)
(set-info :status unsat)
(declare-const |power of d1 is off| Bool)
(declare-const |power of d1 is starting| Bool)
(declare-const |power of d1 is up| Bool)
(declare-const |power of d1 is held| Bool)
(declare-const |leader of d1 is none| Bool)
(declare-const |leader of d1 is d1| Bool)
(declare-const |leader of d1 is d2| Bool)
(declare-const |leader of d1 is d3| Bool)
(declare-const |number of d1 is 1| Bool)
(declare-const |number of d1 is 2| Bool)
(declare-const |number of d1 is 3| Bool)
(declare-const |next number of d1 is 1| Bool)
(declare-const |next number of d1 is 2| Bool)
(declare-const |next number of d1 is 3| Bool)
(declare-const |priority of d1 is 1| Bool)
(declare-const |priority of d1 is 2| Bool)
(declare-const |priority of d1 is 3| Bool)
(declare-const |startup priority of d1 is 1| Bool)
(declare-const |startup priority of d1 is 2| Bool)
(declare-const |startup priority of d1 is 3| Bool)
(declare-const |power of d2 is off| Bool)
(declare-const |power of d2 is starting| Bool)
(declare-const |power of d2 is up| Bool)
(declare-const |power of d2 is held| Bool)
(declare-const |leader of d2 is none| Bool)
(declare-const |leader of d2 is d1| Bool)
(declare-const |leader of d2 is d2| Bool)
(declare-const |leader of d2 is d3| Bool)
(declare-const |number of d2 is 1| Bool)
(declare-const |number of d2 is 2| Bool)
(declare-const |number of d2 is 3| Bool)
(declare-const |next number of d2 is 1| Bool)
(declare-const |next number of d2 is 2| Bool)
(declare-const |next number of d2 is 3| Bool)
(declare-const |priority of d2 is 1| Bool)
(declare-const |priority of d2 is 2| Bool)
(declare-const |priority of d2 is 3| Bool)
(declare-const |startup priority of d2 is 1| Bool)
(declare-const |startup priority of d2 is 2| Bool)
(declare-const |startup priority of d2 is 3| Bool)
(declare-const |power of d3 is off| Bool)
(declare-const |power of d3 is starting| Bool)
(declare-const |power of d3 is up| Bool)
(declare-const |power of d3 is held| Bool)
(declare-const |leader of d3 is none| Bool)
(declare-const |leader of d3 is d1| Bool)
(declare-const |leader of d3 is d2| Bool)
(declare-const |leader of d3 is d3| Bool)
(declare-const |number of d3 is 1| Bool)
(declare-const |number of d3 is 2| Bool)
(declare-const |number of d3 is 3| Bool)
(declare-const |next number of d3 is 1| Bool)
(declare-const |next number of d3 is 2| Bool)
(declare-const |next number of d3 is 3| Bool)
(declare-const |priority of d3 is 1| Bool)
(declare-const |priority of d3 is 2| Bool)
(declare-const |priority of d3 is 3| Bool)
(declare-const |startup priority of d3 is 1| Bool)
(declare-const |startup priority of d3 is 2| Bool)
(declare-const |startup priority of d3 is 3| Bool)
(declare-const |d1 senior to d2| Bool)
(declare-const |d1 senior to d3| Bool)
(declare-const |d2 senior to d1| Bool)
(declare-const |d2 senior to d3| Bool)
(declare-const |d3 senior to d1| Bool)
(declare-const |d3 senior to d2| Bool)
(declare-const |d1/2 enabled| Bool)
(declare-const |side of d1/2 is none| Bool)
(declare-const |side of d1/2 is east| Bool)
(declare-const |side of d1/2 is west| Bool)
(declare-const |startup side of d1/2 is none| Bool)
(declare-const |startup side of d1/2 is east| Bool)
(declare-const |startup side of d1/2 is west| Bool)
(declare-const |operational side of d1/2 is none| Bool)
(declare-const |operational side of d1/2 is east| Bool)
(declare-const |operational side of d1/2 is west| Bool)
(declare-const |d1/3 enabled| Bool)
(declare-const |side of d1/3 is none| Bool)
(declare-const |side of d1/3 is east| Bool)
(declare-const |side of d1/3 is west| Bool)
(declare-const |startup side of d1/3 is none| Bool)
(declare-const |startup side of d1/3 is east| Bool)
(declare-const |startup side of d1/3 is west| Bool)
(declare-const |operational side of d1/3 is none| Bool)
(declare-const |operational side of d1/3 is east| Bool)
(declare-const |operational side of d1/3 is west| Bool)
(declare-const |d2/1 enabled| Bool)
(declare-const |side of d2/1 is none| Bool)
(declare-const |side of d2/1 is east| Bool)
(declare-const |side of d2/1 is west| Bool)
(declare-const |startup side of d2/1 is none| Bool)
(declare-const |startup side of d2/1 is east| Bool)
(declare-const |startup side of d2/1 is west| Bool)
(declare-const |operational side of d2/1 is none| Bool)
(declare-const |operational side of d2/1 is east| Bool)
(declare-const |operational side of d2/1 is west| Bool)
(declare-const |d2/3 enabled| Bool)
(declare-const |side of d2/3 is none| Bool)
(declare-const |side of d2/3 is east| Bool)
(declare-const |side of d2/3 is west| Bool)
(declare-const |startup side of d2/3 is none| Bool)
(declare-const |startup side of d2/3 is east| Bool)
(declare-const |startup side of d2/3 is west| Bool)
(declare-const |operational side of d2/3 is none| Bool)
(declare-const |operational side of d2/3 is east| Bool)
(declare-const |operational side of d2/3 is west| Bool)
(declare-const |d3/1 enabled| Bool)
(declare-const |side of d3/1 is none| Bool)
(declare-const |side of d3/1 is east| Bool)
(declare-const |side of d3/1 is west| Bool)
(declare-const |startup side of d3/1 is none| Bool)
(declare-const |startup side of d3/1 is east| Bool)
(declare-const |startup side of d3/1 is west| Bool)
(declare-const |operational side of d3/1 is none| Bool)
(declare-const |operational side of d3/1 is east| Bool)
(declare-const |operational side of d3/1 is west| Bool)
(declare-const |d3/2 enabled| Bool)
(declare-const |side of d3/2 is none| Bool)
(declare-const |side of d3/2 is east| Bool)
(declare-const |side of d3/2 is west| Bool)
(declare-const |startup side of d3/2 is none| Bool)
(declare-const |startup side of d3/2 is east| Bool)
(declare-const |startup side of d3/2 is west| Bool)
(declare-const |operational side of d3/2 is none| Bool)
(declare-const |operational side of d3/2 is east| Bool)
(declare-const |operational side of d3/2 is west| Bool)
(declare-const |d1--d2 plugged| Bool)
(declare-const |d1--d2 broken| Bool)
(declare-const |d1--d3 plugged| Bool)
(declare-const |d1--d3 broken| Bool)
(declare-const |d2--d3 plugged| Bool)
(declare-const |d2--d3 broken| Bool)
(declare-const |power of d1 is off'| Bool)
(declare-const |power of d1 is starting'| Bool)
(declare-const |power of d1 is up'| Bool)
(declare-const |power of d1 is held'| Bool)
(declare-const |leader of d1 is none'| Bool)
(declare-const |leader of d1 is d1'| Bool)
(declare-const |leader of d1 is d2'| Bool)
(declare-const |leader of d1 is d3'| Bool)
(declare-const |number of d1 is 1'| Bool)
(declare-const |number of d1 is 2'| Bool)
(declare-const |number of d1 is 3'| Bool)
(declare-const |next number of d1 is 1'| Bool)
(declare-const |next number of d1 is 2'| Bool)
(declare-const |next number of d1 is 3'| Bool)
(declare-const |priority of d1 is 1'| Bool)
(declare-const |priority of d1 is 2'| Bool)
(declare-const |priority of d1 is 3'| Bool)
(declare-const |startup priority of d1 is 1'| Bool)
(declare-const |startup priority of d1 is 2'| Bool)
(declare-const |startup priority of d1 is 3'| Bool)
(declare-const |power of d2 is off'| Bool)
(declare-const |power of d2 is starting'| Bool)
(declare-const |power of d2 is up'| Bool)
(declare-const |power of d2 is held'| Bool)
(declare-const |leader of d2 is none'| Bool)
(declare-const |leader of d2 is d1'| Bool)
(declare-const |leader of d2 is d2'| Bool)
(declare-const |leader of d2 is d3'| Bool)
(declare-const |number of d2 is 1'| Bool)
(declare-const |number of d2 is 2'| Bool)
(declare-const |number of d2 is 3'| Bool)
(declare-const |next number of d2 is 1'| Bool)
(declare-const |next number of d2 is 2'| Bool)
(declare-const |next number of d2 is 3'| Bool)
(declare-const |priority of d2 is 1'| Bool)
(declare-const |priority of d2 is 2'| Bool)
(declare-const |priority of d2 is 3'| Bool)
(declare-const |startup priority of d2 is 1'| Bool)
(declare-const |startup priority of d2 is 2'| Bool)
(declare-const |startup priority of d2 is 3'| Bool)
(declare-const |power of d3 is off'| Bool)
(declare-const |power of d3 is starting'| Bool)
(declare-const |power of d3 is up'| Bool)
(declare-const |power of d3 is held'| Bool)
(declare-const |leader of d3 is none'| Bool)
(declare-const |leader of d3 is d1'| Bool)
(declare-const |leader of d3 is d2'| Bool)
(declare-const |leader of d3 is d3'| Bool)
(declare-const |number of d3 is 1'| Bool)
(declare-const |number of d3 is 2'| Bool)
(declare-const |number of d3 is 3'| Bool)
(declare-const |next number of d3 is 1'| Bool)
(declare-const |next number of d3 is 2'| Bool)
(declare-const |next number of d3 is 3'| Bool)
(declare-const |priority of d3 is 1'| Bool)
(declare-const |priority of d3 is 2'| Bool)
(declare-const |priority of d3 is 3'| Bool)
(declare-const |startup priority of d3 is 1'| Bool)
(declare-const |startup priority of d3 is 2'| Bool)
(declare-const |startup priority of d3 is 3'| Bool)
(declare-const |d1 senior to d2'| Bool)
(declare-const |d1 senior to d3'| Bool)
(declare-const |d2 senior to d1'| Bool)
(declare-const |d2 senior to d3'| Bool)
(declare-const |d3 senior to d1'| Bool)
(declare-const |d3 senior to d2'| Bool)
(declare-const |d1/2 enabled'| Bool)
(declare-const |side of d1/2 is none'| Bool)
(declare-const |side of d1/2 is east'| Bool)
(declare-const |side of d1/2 is west'| Bool)
(declare-const |startup side of d1/2 is none'| Bool)
(declare-const |startup side of d1/2 is east'| Bool)
(declare-const |startup side of d1/2 is west'| Bool)
(declare-const |operational side of d1/2 is none'| Bool)
(declare-const |operational side of d1/2 is east'| Bool)
(declare-const |operational side of d1/2 is west'| Bool)
(declare-const |d1/3 enabled'| Bool)
(declare-const |side of d1/3 is none'| Bool)
(declare-const |side of d1/3 is east'| Bool)
(declare-const |side of d1/3 is west'| Bool)
(declare-const |startup side of d1/3 is none'| Bool)
(declare-const |startup side of d1/3 is east'| Bool)
(declare-const |startup side of d1/3 is west'| Bool)
(declare-const |operational side of d1/3 is none'| Bool)
(declare-const |operational side of d1/3 is east'| Bool)
(declare-const |operational side of d1/3 is west'| Bool)
(declare-const |d2/1 enabled'| Bool)
(declare-const |side of d2/1 is none'| Bool)
(declare-const |side of d2/1 is east'| Bool)
(declare-const |side of d2/1 is west'| Bool)
(declare-const |startup side of d2/1 is none'| Bool)
(declare-const |startup side of d2/1 is east'| Bool)
(declare-const |startup side of d2/1 is west'| Bool)
(declare-const |operational side of d2/1 is none'| Bool)
(declare-const |operational side of d2/1 is east'| Bool)
(declare-const |operational side of d2/1 is west'| Bool)
(declare-const |d2/3 enabled'| Bool)
(declare-const |side of d2/3 is none'| Bool)
(declare-const |side of d2/3 is east'| Bool)
(declare-const |side of d2/3 is west'| Bool)
(declare-const |startup side of d2/3 is none'| Bool)
(declare-const |startup side of d2/3 is east'| Bool)
(declare-const |startup side of d2/3 is west'| Bool)
(declare-const |operational side of d2/3 is none'| Bool)
(declare-const |operational side of d2/3 is east'| Bool)
(declare-const |operational side of d2/3 is west'| Bool)
(declare-const |d3/1 enabled'| Bool)
(declare-const |side of d3/1 is none'| Bool)
(declare-const |side of d3/1 is east'| Bool)
(declare-const |side of d3/1 is west'| Bool)
(declare-const |startup side of d3/1 is none'| Bool)
(declare-const |startup side of d3/1 is east'| Bool)
(declare-const |startup side of d3/1 is west'| Bool)
(declare-const |operational side of d3/1 is none'| Bool)
(declare-const |operational side of d3/1 is east'| Bool)
(declare-const |operational side of d3/1 is west'| Bool)
(declare-const |d3/2 enabled'| Bool)
(declare-const |side of d3/2 is none'| Bool)
(declare-const |side of d3/2 is east'| Bool)
(declare-const |side of d3/2 is west'| Bool)
(declare-const |startup side of d3/2 is none'| Bool)
(declare-const |startup side of d3/2 is east'| Bool)
(declare-const |startup side of d3/2 is west'| Bool)
(declare-const |operational side of d3/2 is none'| Bool)
(declare-const |operational side of d3/2 is east'| Bool)
(declare-const |operational side of d3/2 is west'| Bool)
(declare-const |d1--d2 plugged'| Bool)
(declare-const |d1--d2 broken'| Bool)
(declare-const |d1--d3 plugged'| Bool)
(declare-const |d1--d3 broken'| Bool)
(declare-const |d2--d3 plugged'| Bool)
(declare-const |d2--d3 broken'| Bool)
(declare-const n1 Bool)
(assert (= n1 (and (or |power of d1 is off| |power of d1 is starting| |power of d1 is up|
    |power of d1 is held|) (or (not |power of d1 is off|) (not |power of d1 is starting|)) (or
    (not |power of d1 is up|) (and (not |power of d1 is off|) (not |power of d1 is starting|))) (or
    (not |power of d1 is held|) (and (not |power of d1 is off|) (not |power of d1 is starting|)
    (not |power of d1 is up|))) (or |leader of d1 is none| |leader of d1 is d1| |leader of d1 is d2|
    |leader of d1 is d3|) (or (not |leader of d1 is none|) (not |leader of d1 is d1|)) (or
    (not |leader of d1 is d2|) (and (not |leader of d1 is none|) (not |leader of d1 is d1|))) (or
    (not |leader of d1 is d3|) (and (not |leader of d1 is none|) (not |leader of d1 is d1|)
    (not |leader of d1 is d2|))) (or |number of d1 is 1| |number of d1 is 2| |number of d1 is 3|)
    (or (not |number of d1 is 1|) (not |number of d1 is 2|)) (or (not |number of d1 is 3|) (and
    (not |number of d1 is 1|) (not |number of d1 is 2|))) (or |next number of d1 is 1|
    |next number of d1 is 2| |next number of d1 is 3|) (or (not |next number of d1 is 1|)
    (not |next number of d1 is 2|)) (or (not |next number of d1 is 3|) (and
    (not |next number of d1 is 1|) (not |next number of d1 is 2|))) (or |priority of d1 is 1|
    |priority of d1 is 2| |priority of d1 is 3|) (or (not |priority of d1 is 1|)
    (not |priority of d1 is 2|)) (or (not |priority of d1 is 3|) (and (not |priority of d1 is 1|)
    (not |priority of d1 is 2|))) (or |startup priority of d1 is 1| |startup priority of d1 is 2|
    |startup priority of d1 is 3|) (or (not |startup priority of d1 is 1|)
    (not |startup priority of d1 is 2|)) (or (not |startup priority of d1 is 3|) (and
    (not |startup priority of d1 is 1|) (not |startup priority of d1 is 2|))) (or
    |power of d2 is off| |power of d2 is starting| |power of d2 is up| |power of d2 is held|) (or
    (not |power of d2 is off|) (not |power of d2 is starting|)) (or (not |power of d2 is up|) (and
    (not |power of d2 is off|) (not |power of d2 is starting|))) (or (not |power of d2 is held|)
    (and (not |power of d2 is off|) (not |power of d2 is starting|) (not |power of d2 is up|))))))
(declare-const n2 Bool)
(assert (= n2 (and n1 (or |leader of d2 is none| |leader of d2 is d1| |leader of d2 is d2|
    |leader of d2 is d3|) (or (not |leader of d2 is none|) (not |leader of d2 is d1|)) (or
    (not |leader of d2 is d2|) (and (not |leader of d2 is none|) (not |leader of d2 is d1|))) (or
    (not |leader of d2 is d3|) (and (not |leader of d2 is none|) (not |leader of d2 is d1|)
    (not |leader of d2 is d2|))) (or |number of d2 is 1| |number of d2 is 2| |number of d2 is 3|)
    (or (not |number of d2 is 1|) (not |number of d2 is 2|)) (or (not |number of d2 is 3|) (and
    (not |number of d2 is 1|) (not |number of d2 is 2|))) (or |next number of d2 is 1|
    |next number of d2 is 2| |next number of d2 is 3|) (or (not |next number of d2 is 1|)
    (not |next number of d2 is 2|)) (or (not |next number of d2 is 3|) (and
    (not |next number of d2 is 1|) (not |next number of d2 is 2|))) (or |priority of d2 is 1|
    |priority of d2 is 2| |priority of d2 is 3|) (or (not |priority of d2 is 1|)
    (not |priority of d2 is 2|)) (or (not |priority of d2 is 3|) (and (not |priority of d2 is 1|)
    (not |priority of d2 is 2|))) (or |startup priority of d2 is 1| |startup priority of d2 is 2|
    |startup priority of d2 is 3|) (or (not |startup priority of d2 is 1|)
    (not |startup priority of d2 is 2|)) (or (not |startup priority of d2 is 3|) (and
    (not |startup priority of d2 is 1|) (not |startup priority of d2 is 2|))) (or
    |power of d3 is off| |power of d3 is starting| |power of d3 is up| |power of d3 is held|) (or
    (not |power of d3 is off|) (not |power of d3 is starting|)) (or (not |power of d3 is up|) (and
    (not |power of d3 is off|) (not |power of d3 is starting|))) (or (not |power of d3 is held|)
    (and (not |power of d3 is off|) (not |power of d3 is starting|) (not |power of d3 is up|))))))
(declare-const n3 Bool)
(assert (= n3 (and n2 (or |leader of d3 is none| |leader of d3 is d1| |leader of d3 is d2|
    |leader of d3 is d3|) (or (not |leader of d3 is none|) (not |leader of d3 is d1|)) (or
    (not |leader of d3 is d2|) (and (not |leader of d3 is none|) (not |leader of d3 is d1|))) (or
    (not |leader of d3 is d3|) (and (not |leader of d3 is none|) (not |leader of d3 is d1|)
    (not |leader of d3 is d2|))) (or |number of d3 is 1| |number of d3 is 2| |number of d3 is 3|)
    (or (not |number of d3 is 1|) (not |number of d3 is 2|)) (or (not |number of d3 is 3|) (and
    (not |number of d3 is 1|) (not |number of d3 is 2|))) (or |next number of d3 is 1|
    |next number of d3 is 2| |next number of d3 is 3|) (or (not |next number of d3 is 1|)
    (not |next number of d3 is 2|)) (or (not |next number of d3 is 3|) (and
    (not |next number of d3 is 1|) (not |next number of d3 is 2|))) (or |priority of d3 is 1|
    |priority of d3 is 2| |priority of d3 is 3|) (or (not |priority of d3 is 1|)
    (not |priority of d3 is 2|)) (or (not |priority of d3 is 3|) (and (not |priority of d3 is 1|)
    (not |priority of d3 is 2|))) (or |startup priority of d3 is 1| |startup priority of d3 is 2|
    |startup priority of d3 is 3|) (or (not |startup priority of d3 is 1|)
    (not |startup priority of d3 is 2|)) (or (not |startup priority of d3 is 3|) (and
    (not |startup priority of d3 is 1|) (not |startup priority of d3 is 2|))) (or
    |side of d1/2 is none| |side of d1/2 is east| |side of d1/2 is west|) (or
    (not |side of d1/2 is none|) (not |side of d1/2 is east|)) (or (not |side of d1/2 is west|) (and
    (not |side of d1/2 is none|) (not |side of d1/2 is east|))) (or |startup side of d1/2 is none|
    |startup side of d1/2 is east| |startup side of d1/2 is west|) (or
    (not |startup side of d1/2 is none|) (not |startup side of d1/2 is east|)) (or
    (not |startup side of d1/2 is west|) (and (not |startup side of d1/2 is none|)
    (not |startup side of d1/2 is east|))))))
(declare-const n4 Bool)
(assert (= n4 (and n3 (or |operational side of d1/2 is none| |operational side of d1/2 is east|
    |operational side of d1/2 is west|) (or (not |operational side of d1/2 is none|)
    (not |operational side of d1/2 is east|)) (or (not |operational side of d1/2 is west|) (and
    (not |operational side of d1/2 is none|) (not |operational side of d1/2 is east|))) (or
    |side of d1/3 is none| |side of d1/3 is east| |side of d1/3 is west|) (or
    (not |side of d1/3 is none|) (not |side of d1/3 is east|)) (or (not |side of d1/3 is west|) (and
    (not |side of d1/3 is none|) (not |side of d1/3 is east|))) (or |startup side of d1/3 is none|
    |startup side of d1/3 is east| |startup side of d1/3 is west|) (or
    (not |startup side of d1/3 is none|) (not |startup side of d1/3 is east|)) (or
    (not |startup side of d1/3 is west|) (and (not |startup side of d1/3 is none|)
    (not |startup side of d1/3 is east|))) (or |operational side of d1/3 is none|
    |operational side of d1/3 is east| |operational side of d1/3 is west|) (or
    (not |operational side of d1/3 is none|) (not |operational side of d1/3 is east|)) (or
    (not |operational side of d1/3 is west|) (and (not |operational side of d1/3 is none|)
    (not |operational side of d1/3 is east|))) (or |side of d2/1 is none| |side of d2/1 is east|
    |side of d2/1 is west|) (or (not |side of d2/1 is none|) (not |side of d2/1 is east|)) (or
    (not |side of d2/1 is west|) (and (not |side of d2/1 is none|) (not |side of d2/1 is east|)))
    (or |startup side of d2/1 is none| |startup side of d2/1 is east| |startup side of d2/1 is west|)
    (or (not |startup side of d2/1 is none|) (not |startup side of d2/1 is east|)) (or
    (not |startup side of d2/1 is west|) (and (not |startup side of d2/1 is none|)
    (not |startup side of d2/1 is east|))) (or |operational side of d2/1 is none|
    |operational side of d2/1 is east| |operational side of d2/1 is west|) (or
    (not |operational side of d2/1 is none|) (not |operational side of d2/1 is east|)) (or
    (not |operational side of d2/1 is west|) (and (not |operational side of d2/1 is none|)
    (not |operational side of d2/1 is east|))) (or |side of d2/3 is none| |side of d2/3 is east|
    |side of d2/3 is west|) (or (not |side of d2/3 is none|) (not |side of d2/3 is east|)) (or
    (not |side of d2/3 is west|) (and (not |side of d2/3 is none|) (not |side of d2/3 is east|))))))
(declare-const n5 Bool)
(assert (= n5 (and n4 (or |startup side of d2/3 is none| |startup side of d2/3 is east|
    |startup side of d2/3 is west|) (or (not |startup side of d2/3 is none|)
    (not |startup side of d2/3 is east|)) (or (not |startup side of d2/3 is west|) (and
    (not |startup side of d2/3 is none|) (not |startup side of d2/3 is east|))) (or
    |operational side of d2/3 is none| |operational side of d2/3 is east|
    |operational side of d2/3 is west|) (or (not |operational side of d2/3 is none|)
    (not |operational side of d2/3 is east|)) (or (not |operational side of d2/3 is west|) (and
    (not |operational side of d2/3 is none|) (not |operational side of d2/3 is east|))) (or
    |side of d3/1 is none| |side of d3/1 is east| |side of d3/1 is west|) (or
    (not |side of d3/1 is none|) (not |side of d3/1 is east|)) (or (not |side of d3/1 is west|) (and
    (not |side of d3/1 is none|) (not |side of d3/1 is east|))) (or |startup side of d3/1 is none|
    |startup side of d3/1 is east| |startup side of d3/1 is west|) (or
    (not |startup side of d3/1 is none|) (not |startup side of d3/1 is east|)) (or
    (not |startup side of d3/1 is west|) (and (not |startup side of d3/1 is none|)
    (not |startup side of d3/1 is east|))) (or |operational side of d3/1 is none|
    |operational side of d3/1 is east| |operational side of d3/1 is west|) (or
    (not |operational side of d3/1 is none|) (not |operational side of d3/1 is east|)) (or
    (not |operational side of d3/1 is west|) (and (not |operational side of d3/1 is none|)
    (not |operational side of d3/1 is east|))) (or |side of d3/2 is none| |side of d3/2 is east|
    |side of d3/2 is west|) (or (not |side of d3/2 is none|) (not |side of d3/2 is east|)) (or
    (not |side of d3/2 is west|) (and (not |side of d3/2 is none|) (not |side of d3/2 is east|)))
    (or |startup side of d3/2 is none| |startup side of d3/2 is east| |startup side of d3/2 is west|)
    (or (not |startup side of d3/2 is none|) (not |startup side of d3/2 is east|)) (or
    (not |startup side of d3/2 is west|) (and (not |startup side of d3/2 is none|)
    (not |startup side of d3/2 is east|))) (or |operational side of d3/2 is none|
    |operational side of d3/2 is east| |operational side of d3/2 is west|) (or
    (not |operational side of d3/2 is none|) (not |operational side of d3/2 is east|)) (or
    (not |operational side of d3/2 is west|) (and (not |operational side of d3/2 is none|)
    (not |operational side of d3/2 is east|))))))
(declare-const n6 Bool)
(assert (= n6 (and (or |power of d1 is off'| |power of d1 is starting'| |power of d1 is up'|
    |power of d1 is held'|) (or (not |power of d1 is off'|) (not |power of d1 is starting'|)) (or
    (not |power of d1 is up'|) (and (not |power of d1 is off'|) (not |power of d1 is starting'|)))
    (or (not |power of d1 is held'|) (and (not |power of d1 is off'|)
    (not |power of d1 is starting'|) (not |power of d1 is up'|))) (or |leader of d1 is none'|
    |leader of d1 is d1'| |leader of d1 is d2'| |leader of d1 is d3'|) (or
    (not |leader of d1 is none'|) (not |leader of d1 is d1'|)) (or (not |leader of d1 is d2'|) (and
    (not |leader of d1 is none'|) (not |leader of d1 is d1'|))) (or (not |leader of d1 is d3'|) (and
    (not |leader of d1 is none'|) (not |leader of d1 is d1'|) (not |leader of d1 is d2'|))) (or
    |number of d1 is 1'| |number of d1 is 2'| |number of d1 is 3'|) (or (not |number of d1 is 1'|)
    (not |number of d1 is 2'|)) (or (not |number of d1 is 3'|) (and (not |number of d1 is 1'|)
    (not |number of d1 is 2'|))) (or |next number of d1 is 1'| |next number of d1 is 2'|
    |next number of d1 is 3'|) (or (not |next number of d1 is 1'|) (not |next number of d1 is 2'|))
    (or (not |next number of d1 is 3'|) (and (not |next number of d1 is 1'|)
    (not |next number of d1 is 2'|))) (or |priority of d1 is 1'| |priority of d1 is 2'|
    |priority of d1 is 3'|) (or (not |priority of d1 is 1'|) (not |priority of d1 is 2'|)) (or
    (not |priority of d1 is 3'|) (and (not |priority of d1 is 1'|) (not |priority of d1 is 2'|)))
    (or |startup priority of d1 is 1'| |startup priority of d1 is 2'| |startup priority of d1 is 3'|)
    (or (not |startup priority of d1 is 1'|) (not |startup priority of d1 is 2'|)) (or
    (not |startup priority of d1 is 3'|) (and (not |startup priority of d1 is 1'|)
    (not |startup priority of d1 is 2'|))) (or |power of d2 is off'| |power of d2 is starting'|
    |power of d2 is up'| |power of d2 is held'|) (or (not |power of d2 is off'|)
    (not |power of d2 is starting'|)) (or (not |power of d2 is up'|) (and
    (not |power of d2 is off'|) (not |power of d2 is starting'|))) (or (not |power of d2 is held'|)
    (and (not |power of d2 is off'|) (not |power of d2 is starting'|) (not |power of d2 is up'|))))))
(declare-const n7 Bool)
(assert (= n7 (and n6 (or |leader of d2 is none'| |leader of d2 is d1'| |leader of d2 is d2'|
    |leader of d2 is d3'|) (or (not |leader of d2 is none'|) (not |leader of d2 is d1'|)) (or
    (not |leader of d2 is d2'|) (and (not |leader of d2 is none'|) (not |leader of d2 is d1'|))) (or
    (not |leader of d2 is d3'|) (and (not |leader of d2 is none'|) (not |leader of d2 is d1'|)
    (not |leader of d2 is d2'|))) (or |number of d2 is 1'| |number of d2 is 2'| |number of d2 is 3'|)
    (or (not |number of d2 is 1'|) (not |number of d2 is 2'|)) (or (not |number of d2 is 3'|) (and
    (not |number of d2 is 1'|) (not |number of d2 is 2'|))) (or |next number of d2 is 1'|
    |next number of d2 is 2'| |next number of d2 is 3'|) (or (not |next number of d2 is 1'|)
    (not |next number of d2 is 2'|)) (or (not |next number of d2 is 3'|) (and
    (not |next number of d2 is 1'|) (not |next number of d2 is 2'|))) (or |priority of d2 is 1'|
    |priority of d2 is 2'| |priority of d2 is 3'|) (or (not |priority of d2 is 1'|)
    (not |priority of d2 is 2'|)) (or (not |priority of d2 is 3'|) (and (not |priority of d2 is 1'|)
    (not |priority of d2 is 2'|))) (or |startup priority of d2 is 1'| |startup priority of d2 is 2'|
    |startup priority of d2 is 3'|) (or (not |startup priority of d2 is 1'|)
    (not |startup priority of d2 is 2'|)) (or (not |startup priority of d2 is 3'|) (and
    (not |startup priority of d2 is 1'|) (not |startup priority of d2 is 2'|))) (or
    |power of d3 is off'| |power of d3 is starting'| |power of d3 is up'| |power of d3 is held'|)
    (or (not |power of d3 is off'|) (not |power of d3 is starting'|)) (or (not |power of d3 is up'|)
    (and (not |power of d3 is off'|) (not |power of d3 is starting'|))) (or
    (not |power of d3 is held'|) (and (not |power of d3 is off'|) (not |power of d3 is starting'|)
    (not |power of d3 is up'|))))))
(declare-const n8 Bool)
(assert (= n8 (and n7 (or |leader of d3 is none'| |leader of d3 is d1'| |leader of d3 is d2'|
    |leader of d3 is d3'|) (or (not |leader of d3 is none'|) (not |leader of d3 is d1'|)) (or
    (not |leader of d3 is d2'|) (and (not |leader of d3 is none'|) (not |leader of d3 is d1'|))) (or
    (not |leader of d3 is d3'|) (and (not |leader of d3 is none'|) (not |leader of d3 is d1'|)
    (not |leader of d3 is d2'|))) (or |number of d3 is 1'| |number of d3 is 2'| |number of d3 is 3'|)
    (or (not |number of d3 is 1'|) (not |number of d3 is 2'|)) (or (not |number of d3 is 3'|) (and
    (not |number of d3 is 1'|) (not |number of d3 is 2'|))) (or |next number of d3 is 1'|
    |next number of d3 is 2'| |next number of d3 is 3'|) (or (not |next number of d3 is 1'|)
    (not |next number of d3 is 2'|)) (or (not |next number of d3 is 3'|) (and
    (not |next number of d3 is 1'|) (not |next number of d3 is 2'|))) (or |priority of d3 is 1'|
    |priority of d3 is 2'| |priority of d3 is 3'|) (or (not |priority of d3 is 1'|)
    (not |priority of d3 is 2'|)) (or (not |priority of d3 is 3'|) (and (not |priority of d3 is 1'|)
    (not |priority of d3 is 2'|))) (or |startup priority of d3 is 1'| |startup priority of d3 is 2'|
    |startup priority of d3 is 3'|) (or (not |startup priority of d3 is 1'|)
    (not |startup priority of d3 is 2'|)) (or (not |startup priority of d3 is 3'|) (and
    (not |startup priority of d3 is 1'|) (not |startup priority of d3 is 2'|))) (or
    |side of d1/2 is none'| |side of d1/2 is east'| |side of d1/2 is west'|) (or
    (not |side of d1/2 is none'|) (not |side of d1/2 is east'|)) (or (not |side of d1/2 is west'|)
    (and (not |side of d1/2 is none'|) (not |side of d1/2 is east'|))) (or
    |startup side of d1/2 is none'| |startup side of d1/2 is east'| |startup side of d1/2 is west'|)
    (or (not |startup side of d1/2 is none'|) (not |startup side of d1/2 is east'|)) (or
    (not |startup side of d1/2 is west'|) (and (not |startup side of d1/2 is none'|)
    (not |startup side of d1/2 is east'|))))))
(declare-const n9 Bool)
(assert (= n9 (and n8 (or |operational side of d1/2 is none'| |operational side of d1/2 is east'|
    |operational side of d1/2 is west'|) (or (not |operational side of d1/2 is none'|)
    (not |operational side of d1/2 is east'|)) (or (not |operational side of d1/2 is west'|) (and
    (not |operational side of d1/2 is none'|) (not |operational side of d1/2 is east'|))) (or
    |side of d1/3 is none'| |side of d1/3 is east'| |side of d1/3 is west'|) (or
    (not |side of d1/3 is none'|) (not |side of d1/3 is east'|)) (or (not |side of d1/3 is west'|)
    (and (not |side of d1/3 is none'|) (not |side of d1/3 is east'|))) (or
    |startup side of d1/3 is none'| |startup side of d1/3 is east'| |startup side of d1/3 is west'|)
    (or (not |startup side of d1/3 is none'|) (not |startup side of d1/3 is east'|)) (or
    (not |startup side of d1/3 is west'|) (and (not |startup side of d1/3 is none'|)
    (not |startup side of d1/3 is east'|))) (or |operational side of d1/3 is none'|
    |operational side of d1/3 is east'| |operational side of d1/3 is west'|) (or
    (not |operational side of d1/3 is none'|) (not |operational side of d1/3 is east'|)) (or
    (not |operational side of d1/3 is west'|) (and (not |operational side of d1/3 is none'|)
    (not |operational side of d1/3 is east'|))) (or |side of d2/1 is none'| |side of d2/1 is east'|
    |side of d2/1 is west'|) (or (not |side of d2/1 is none'|) (not |side of d2/1 is east'|)) (or
    (not |side of d2/1 is west'|) (and (not |side of d2/1 is none'|) (not |side of d2/1 is east'|)))
    (or |startup side of d2/1 is none'| |startup side of d2/1 is east'|
    |startup side of d2/1 is west'|) (or (not |startup side of d2/1 is none'|)
    (not |startup side of d2/1 is east'|)) (or (not |startup side of d2/1 is west'|) (and
    (not |startup side of d2/1 is none'|) (not |startup side of d2/1 is east'|))) (or
    |operational side of d2/1 is none'| |operational side of d2/1 is east'|
    |operational side of d2/1 is west'|) (or (not |operational side of d2/1 is none'|)
    (not |operational side of d2/1 is east'|)) (or (not |operational side of d2/1 is west'|) (and
    (not |operational side of d2/1 is none'|) (not |operational side of d2/1 is east'|))) (or
    |side of d2/3 is none'| |side of d2/3 is east'| |side of d2/3 is west'|) (or
    (not |side of d2/3 is none'|) (not |side of d2/3 is east'|)) (or (not |side of d2/3 is west'|)
    (and (not |side of d2/3 is none'|) (not |side of d2/3 is east'|))))))
(declare-const n10 Bool)
(assert (= n10 (and n9 (or |startup side of d2/3 is none'| |startup side of d2/3 is east'|
    |startup side of d2/3 is west'|) (or (not |startup side of d2/3 is none'|)
    (not |startup side of d2/3 is east'|)) (or (not |startup side of d2/3 is west'|) (and
    (not |startup side of d2/3 is none'|) (not |startup side of d2/3 is east'|))) (or
    |operational side of d2/3 is none'| |operational side of d2/3 is east'|
    |operational side of d2/3 is west'|) (or (not |operational side of d2/3 is none'|)
    (not |operational side of d2/3 is east'|)) (or (not |operational side of d2/3 is west'|) (and
    (not |operational side of d2/3 is none'|) (not |operational side of d2/3 is east'|))) (or
    |side of d3/1 is none'| |side of d3/1 is east'| |side of d3/1 is west'|) (or
    (not |side of d3/1 is none'|) (not |side of d3/1 is east'|)) (or (not |side of d3/1 is west'|)
    (and (not |side of d3/1 is none'|) (not |side of d3/1 is east'|))) (or
    |startup side of d3/1 is none'| |startup side of d3/1 is east'| |startup side of d3/1 is west'|)
    (or (not |startup side of d3/1 is none'|) (not |startup side of d3/1 is east'|)) (or
    (not |startup side of d3/1 is west'|) (and (not |startup side of d3/1 is none'|)
    (not |startup side of d3/1 is east'|))) (or |operational side of d3/1 is none'|
    |operational side of d3/1 is east'| |operational side of d3/1 is west'|) (or
    (not |operational side of d3/1 is none'|) (not |operational side of d3/1 is east'|)) (or
    (not |operational side of d3/1 is west'|) (and (not |operational side of d3/1 is none'|)
    (not |operational side of d3/1 is east'|))) (or |side of d3/2 is none'| |side of d3/2 is east'|
    |side of d3/2 is west'|) (or (not |side of d3/2 is none'|) (not |side of d3/2 is east'|)) (or
    (not |side of d3/2 is west'|) (and (not |side of d3/2 is none'|) (not |side of d3/2 is east'|)))
    (or |startup side of d3/2 is none'| |startup side of d3/2 is east'|
    |startup side of d3/2 is west'|) (or (not |startup side of d3/2 is none'|)
    (not |startup side of d3/2 is east'|)) (or (not |startup side of d3/2 is west'|) (and
    (not |startup side of d3/2 is none'|) (not |startup side of d3/2 is east'|))) (or
    |operational side of d3/2 is none'| |operational side of d3/2 is east'|
    |operational side of d3/2 is west'|) (or (not |operational side of d3/2 is none'|)
    (not |operational side of d3/2 is east'|)) (or (not |operational side of d3/2 is west'|) (and
    (not |operational side of d3/2 is none'|) (not |operational side of d3/2 is east'|))))))
(declare-const n11 Bool)
(assert (= n11 (and (not |power of d1 is up|) (not |power of d1 is held|))))
(declare-const n12 Bool)
(assert (= n12 (and (not |power of d2 is up|) (not |power of d2 is held|))))
(declare-const n13 Bool)
(assert (= n13 (and (not |power of d3 is up|) (not |power of d3 is held|))))
(declare-const n14 Bool)
(assert (= n14 (and |power of d1 is up| |power of d2 is up| (not |operational side of d1/2 is none|)
    (not |operational side of d2/1 is none|) |d1/2 enabled| |d2/1 enabled| |d1--d2 plugged|
    (not |d1--d2 broken|) (not n11) (not n12))))
(declare-const n15 Bool)
(assert (= n15 (and |power of d1 is up| |power of d3 is up| (not |operational side of d1/3 is none|)
    (not |operational side of d3/1 is none|) |d1/3 enabled| |d3/1 enabled| |d1--d3 plugged|
    (not |d1--d3 broken|) (not n11) (not n13))))
(declare-const n16 Bool)
(assert (= n16 (and |power of d2 is up| |power of d3 is up| (not |operational side of d2/3 is none|)
    (not |operational side of d3/2 is none|) |d2/3 enabled| |d3/2 enabled| |d2--d3 plugged|
    (not |d2--d3 broken|) (not n12) (not n13))))
(declare-const n17 Bool)
(assert (= n17 (and (not n16) (or (not n14) (not n15)))))
(declare-const n18 Bool)
(assert (= n18 (and (not n15) (or (not n14) n17))))
(declare-const n19 Bool)
(assert (= n19 (and (not n14) (or n17 n18))))
(declare-const n20 Bool)
(assert (= n20 (and (not |power of d1 is up'|) (not |power of d1 is held'|))))
(declare-const n21 Bool)
(assert (= n21 (and (not |power of d2 is up'|) (not |power of d2 is held'|))))
(declare-const n22 Bool)
(assert (= n22 (and (not |power of d3 is up'|) (not |power of d3 is held'|))))
(declare-const n23 Bool)
(assert (= n23 (and |power of d1 is up'| |power of d2 is up'|
    (not |operational side of d1/2 is none'|) (not |operational side of d2/1 is none'|)
    |d1/2 enabled'| |d2/1 enabled'| |d1--d2 plugged'| (not |d1--d2 broken'|) (not n20) (not n21))))
(declare-const n24 Bool)
(assert (= n24 (and |power of d1 is up'| |power of d3 is up'|
    (not |operational side of d1/3 is none'|) (not |operational side of d3/1 is none'|)
    |d1/3 enabled'| |d3/1 enabled'| |d1--d3 plugged'| (not |d1--d3 broken'|) (not n20) (not n22))))
(declare-const n25 Bool)
(assert (= n25 (and |power of d2 is up'| |power of d3 is up'|
    (not |operational side of d2/3 is none'|) (not |operational side of d3/2 is none'|)
    |d2/3 enabled'| |d3/2 enabled'| |d2--d3 plugged'| (not |d2--d3 broken'|) (not n21) (not n22))))
(declare-const n26 Bool)
(assert (= n26 (and (not n25) (or (not n23) (not n24)))))
(declare-const n27 Bool)
(assert (= n27 (and (not n24) (or (not n23) n26))))
(declare-const n28 Bool)
(assert (= n28 (and (not n23) (or n26 n27))))
(declare-const n29 Bool)
(assert (= n29 (and |power of d1 is up'| (not |leader of d1 is none'|))))
(declare-const n30 Bool)
(assert (= n30 (and |power of d1 is up'| |leader of d1 is d1'|)))
(declare-const n31 Bool)
(assert (= n31 (and |power of d2 is up'| (not |leader of d2 is none'|))))
(declare-const n32 Bool)
(assert (= n32 (and |power of d2 is up'| |leader of d2 is d2'|)))
(declare-const n33 Bool)
(assert (= n33 (and |power of d3 is up'| (not |leader of d3 is none'|))))
(declare-const n34 Bool)
(assert (= n34 (and |power of d3 is up'| |leader of d3 is d3'|)))
(declare-const n35 Bool)
(assert (= n35 (and |power of d2 is up'| |leader of d2 is d2'| (not n28))))
(declare-const n36 Bool)
(assert (= n36 (and (not |number of d2 is 2'|) (not |number of d2 is 3'|))))
(declare-const n37 Bool)
(assert (= n37 (and (not |number of d1 is 2'|) (not |number of d1 is 3'|))))
(declare-const n38 Bool)
(assert (= n38 (and (or (not |number of d1 is 3'|) (not |number of d2 is 2'|)) (or
    (not |number of d2 is 1'|) n37))))
(declare-const n39 Bool)
(assert (= n39 (and |priority of d1 is 3'| |priority of d2 is 2'|)))
(declare-const n40 Bool)
(assert (= n40 (and (not |priority of d1 is 2'|) (not |priority of d1 is 3'|))))
(declare-const n41 Bool)
(assert (= n41 (and |priority of d2 is 1'| (not n40))))
(declare-const n42 Bool)
(assert (= n42 (and |priority of d1 is 2'| |priority of d2 is 3'|)))
(declare-const n43 Bool)
(assert (= n43 (and (not |priority of d2 is 2'|) (not |priority of d2 is 3'|))))
(declare-const n44 Bool)
(assert (= n44 (and |priority of d1 is 1'| (not n43))))
(declare-const n45 Bool)
(assert (= n45 (and (or |d1 senior to d2'| (and (not |d2 senior to d1'|) (or (and
    |number of d1 is 2'| |number of d2 is 3'|) (and |number of d1 is 1'| (not n36)) n38))) (not n42)
    (not n44))))
(declare-const n46 Bool)
(assert (= n46 (and |power of d2 is up'| |leader of d2 is d2'| (not n28) (not n39) (not n41)
    (not n45))))
(declare-const n47 Bool)
(assert (= n47 (and |power of d3 is up'| |leader of d3 is d3'| (not n27))))
(declare-const n48 Bool)
(assert (= n48 (and (not |number of d3 is 2'|) (not |number of d3 is 3'|))))
(declare-const n49 Bool)
(assert (= n49 (and (or (not |number of d1 is 3'|) (not |number of d3 is 2'|)) (or
    (not |number of d3 is 1'|) n37))))
(declare-const n50 Bool)
(assert (= n50 (and |priority of d1 is 3'| |priority of d3 is 2'|)))
(declare-const n51 Bool)
(assert (= n51 (and |priority of d3 is 1'| (not n40))))
(declare-const n52 Bool)
(assert (= n52 (and |priority of d1 is 2'| |priority of d3 is 3'|)))
(declare-const n53 Bool)
(assert (= n53 (and (not |priority of d3 is 2'|) (not |priority of d3 is 3'|))))
(declare-const n54 Bool)
(assert (= n54 (and |priority of d1 is 1'| (not n53))))
(declare-const n55 Bool)
(assert (= n55 (and (or |d1 senior to d3'| (and (not |d3 senior to d1'|) (or (and
    |number of d1 is 2'| |number of d3 is 3'|) (and |number of d1 is 1'| (not n48)) n49))) (not n52)
    (not n54))))
(declare-const n56 Bool)
(assert (= n56 (and |power of d3 is up'| |leader of d3 is d3'| (not n27) (not n50) (not n51)
    (not n55))))
(declare-const n57 Bool)
(assert (= n57 (and |power of d1 is up'| |leader of d1 is d1'| (not n28))))
(declare-const n58 Bool)
(assert (= n58 (and (not n39) (not n41) (or |d2 senior to d1'| (and (not |d1 senior to d2'|)
    (not n38))))))
(declare-const n59 Bool)
(assert (= n59 (and |power of d1 is up'| |leader of d1 is d1'| (not n28) (not n42) (not n44)
    (not n58))))
(declare-const n60 Bool)
(assert (= n60 (and |power of d3 is up'| |leader of d3 is d3'| (not n26))))
(declare-const n61 Bool)
(assert (= n61 (and (or (not |number of d2 is 3'|) (not |number of d3 is 2'|)) (or
    (not |number of d3 is 1'|) n36))))
(declare-const n62 Bool)
(assert (= n62 (and |priority of d2 is 3'| |priority of d3 is 2'|)))
(declare-const n63 Bool)
(assert (= n63 (and |priority of d3 is 1'| (not n43))))
(declare-const n64 Bool)
(assert (= n64 (and |priority of d2 is 2'| |priority of d3 is 3'|)))
(declare-const n65 Bool)
(assert (= n65 (and |priority of d2 is 1'| (not n53))))
(declare-const n66 Bool)
(assert (= n66 (and (or |d2 senior to d3'| (and (not |d3 senior to d2'|) (or (and
    |number of d2 is 2'| |number of d3 is 3'|) (and |number of d2 is 1'| (not n48)) n61))) (not n64)
    (not n65))))
(declare-const n67 Bool)
(assert (= n67 (and |power of d3 is up'| |leader of d3 is d3'| (not n26) (not n62) (not n63)
    (not n66))))
(declare-const n68 Bool)
(assert (= n68 (and |power of d1 is up'| |leader of d1 is d1'| (not n27))))
(declare-const n69 Bool)
(assert (= n69 (and (not n50) (not n51) (or |d3 senior to d1'| (and (not |d1 senior to d3'|)
    (not n49))))))
(declare-const n70 Bool)
(assert (= n70 (and |power of d1 is up'| |leader of d1 is d1'| (not n27) (not n52) (not n54)
    (not n69))))
(declare-const n71 Bool)
(assert (= n71 (and |power of d2 is up'| |leader of d2 is d2'| (not n26))))
(declare-const n72 Bool)
(assert (= n72 (and (not n62) (not n63) (or |d3 senior to d2'| (and (not |d2 senior to d3'|)
    (not n61))))))
(declare-const n73 Bool)
(assert (= n73 (and |power of d2 is up'| |leader of d2 is d2'| (not n26) (not n64) (not n65)
    (not n72))))
(declare-const n74 Bool)
(assert (= n74 (and (not n29) (or (not |power of d1 is up'|) (not |leader of d1 is none'|) (and
    |power of d2 is up'| (not |leader of d2 is none'|) (not n28)) (and |power of d3 is up'|
    (not |leader of d3 is none'|) (not n27))))))
(declare-const n75 Bool)
(assert (= n75 (and (not n31) (or (not |power of d2 is up'|) (not |leader of d2 is none'|) (and
    |power of d1 is up'| (not |leader of d1 is none'|) (not n28)) (and |power of d3 is up'|
    (not |leader of d3 is none'|) (not n26))))))
(declare-const n76 Bool)
(assert (= n76 (and (not n33) (or (not |power of d3 is up'|) (not |leader of d3 is none'|) (and
    |power of d1 is up'| (not |leader of d1 is none'|) (not n27)) (and |power of d2 is up'|
    (not |leader of d2 is none'|) (not n26))))))
(declare-const n77 Bool)
(assert (= n77 (and (or (not |power of d1 is up'|) (not |leader of d1 is d1'|) n46 n56) (or n30 n35
    n47 n74 (and (not n39) (not n41) (not n45) (not n28) (not n30) (not n32) (not n60) (not n75))
    (and (not n50) (not n51) (not n55) (not n27) (not n30) (not n34) (not n71) (not n76))))))
(declare-const n78 Bool)
(assert (= n78 (and (or (not |power of d2 is up'|) (not |leader of d2 is d2'|) n59 n67) (or n32 n57
    n60 n75 (and (not n42) (not n44) (not n58) (not n28) (not n30) (not n32) (not n47) (not n74))
    (and (not n62) (not n63) (not n66) (not n26) (not n32) (not n34) (not n68) (not n76))))))
(declare-const n79 Bool)
(assert (= n79 (and (or (not |power of d3 is up'|) (not |leader of d3 is d3'|) n70 n73) (or n34 n68
    n71 n76 (and (not n52) (not n54) (not n69) (not n27) (not n30) (not n34) (not n35) (not n74))
    (and (not n64) (not n65) (not n72) (not n26) (not n32) (not n34) (not n57) (not n75))))))
(declare-const n80 Bool)
(assert (= n80 (and |leader of d1 is d2'| |power of d2 is up'| |leader of d2 is d2'| (not n28)
    (not n59) (not n67))))
(declare-const n81 Bool)
(assert (= n81 (and |leader of d1 is d3'| |power of d3 is up'| |leader of d3 is d3'| (not n27)
    (not n70) (not n73))))
(declare-const n82 Bool)
(assert (= n82 (and |power of d1 is up'| |leader of d1 is d1'| |leader of d2 is d1'| (not n28)
    (not n46) (not n56))))
(declare-const n83 Bool)
(assert (= n83 (and |leader of d2 is d3'| |power of d3 is up'| |leader of d3 is d3'| (not n26)
    (not n70) (not n73))))
(declare-const n84 Bool)
(assert (= n84 (and |power of d1 is up'| |leader of d1 is d1'| |leader of d3 is d1'| (not n27)
    (not n46) (not n56))))
(declare-const n85 Bool)
(assert (= n85 (and |power of d2 is up'| |leader of d2 is d2'| |leader of d3 is d2'| (not n26)
    (not n59) (not n67))))
(declare-const n86 Bool)
(assert (= n86 (and (or (not |number of d1 is 1'|) (not |number of d2 is 1'|)) (or
    (not |number of d1 is 2'|) (not |number of d2 is 2'|)) (or (not |number of d1 is 3'|)
    (not |number of d2 is 3'|)))))
(declare-const n87 Bool)
(assert (= n87 (and (not n32) (or (not |leader of d2 is d1'|) n28) (or (not |leader of d2 is d3'|)
    n26))))
(declare-const n88 Bool)
(assert (= n88 (and |leader of d1 is d1'| |leader of d2 is d1'|)))
(declare-const n89 Bool)
(assert (= n89 (and |leader of d1 is d2'| |leader of d2 is d2'|)))
(declare-const n90 Bool)
(assert (= n90 (and |leader of d1 is d3'| |leader of d2 is d3'|)))
(declare-const n91 Bool)
(assert (= n91 (and |leader of d1 is d1'| (not n46) (not n56))))
(declare-const n92 Bool)
(assert (= n92 (and (or (not |power of d1 is up'|) (not |leader of d1 is none'|) (and (not n31)
    (not n42) (not n44) (not n58))) (or (not |power of d1 is up'|) |leader of d1 is none'|
    (not |power of d2 is up'|) |leader of d2 is none'| n80 n81 n87 n88 n89 n90 n91))))
(declare-const n93 Bool)
(assert (= n93 (and (not n28) (not n86) (not n92))))
(declare-const n94 Bool)
(assert (= n94 (and (or (not |number of d1 is 1'|) (not |number of d3 is 1'|)) (or
    (not |number of d1 is 2'|) (not |number of d3 is 2'|)) (or (not |number of d1 is 3'|)
    (not |number of d3 is 3'|)))))
(declare-const n95 Bool)
(assert (= n95 (and (not n34) (or (not |leader of d3 is d1'|) n27) (or (not |leader of d3 is d2'|)
    n26))))
(declare-const n96 Bool)
(assert (= n96 (and |leader of d1 is d1'| |leader of d3 is d1'|)))
(declare-const n97 Bool)
(assert (= n97 (and |leader of d1 is d2'| |leader of d3 is d2'|)))
(declare-const n98 Bool)
(assert (= n98 (and |leader of d1 is d3'| |leader of d3 is d3'|)))
(declare-const n99 Bool)
(assert (= n99 (and (or (not |power of d1 is up'|) (not |leader of d1 is none'|) (and (not n33)
    (not n52) (not n54) (not n69))) (or (not |power of d1 is up'|) |leader of d1 is none'|
    (not |power of d3 is up'|) |leader of d3 is none'| n80 n81 n91 n95 n96 n97 n98))))
(declare-const n100 Bool)
(assert (= n100 (and (not n27) (not n94) (not n99))))
(declare-const n101 Bool)
(assert (= n101 (and |power of d1 is up'| (not |leader of d1 is none'|) (or n30 n35 n47) (not n80)
    (not n81) (not n91))))
(declare-const n102 Bool)
(assert (= n102 (and (not n93) (not n100) n101)))
(declare-const n103 Bool)
(assert (= n103 (and (not n30) (or (not |leader of d1 is d2'|) n28) (or (not |leader of d1 is d3'|)
    n27))))
(declare-const n104 Bool)
(assert (= n104 (and |leader of d2 is d2'| (not n59) (not n67))))
(declare-const n105 Bool)
(assert (= n105 (and (or (not |power of d2 is up'|) (not |leader of d2 is none'|) (and (not n29)
    (not n39) (not n41) (not n45))) (or (not |power of d1 is up'|) |leader of d1 is none'|
    (not |power of d2 is up'|) |leader of d2 is none'| n82 n83 n88 n89 n90 n103 n104))))
(declare-const n106 Bool)
(assert (= n106 (and (not n28) (not n86) (not n105))))
(declare-const n107 Bool)
(assert (= n107 (and (or (not |number of d2 is 1'|) (not |number of d3 is 1'|)) (or
    (not |number of d2 is 2'|) (not |number of d3 is 2'|)) (or (not |number of d2 is 3'|)
    (not |number of d3 is 3'|)))))
(declare-const n108 Bool)
(assert (= n108 (and |leader of d2 is d1'| |leader of d3 is d1'|)))
(declare-const n109 Bool)
(assert (= n109 (and |leader of d2 is d2'| |leader of d3 is d2'|)))
(declare-const n110 Bool)
(assert (= n110 (and |leader of d2 is d3'| |leader of d3 is d3'|)))
(declare-const n111 Bool)
(assert (= n111 (and (or (not |power of d2 is up'|) (not |leader of d2 is none'|) (and (not n33)
    (not n64) (not n65) (not n72))) (or (not |power of d2 is up'|) |leader of d2 is none'|
    (not |power of d3 is up'|) |leader of d3 is none'| n82 n83 n95 n104 n108 n109 n110))))
(declare-const n112 Bool)
(assert (= n112 (and (not n26) (not n107) (not n111))))
(declare-const n113 Bool)
(assert (= n113 (and |power of d2 is up'| (not |leader of d2 is none'|) (or n32 n57 n60) (not n82)
    (not n83) (not n104))))
(declare-const n114 Bool)
(assert (= n114 (and (not n106) (not n112) n113)))
(declare-const n115 Bool)
(assert (= n115 (and |leader of d3 is d3'| (not n70) (not n73))))
(declare-const n116 Bool)
(assert (= n116 (and (or (not |power of d3 is up'|) (not |leader of d3 is none'|) (and (not n29)
    (not n50) (not n51) (not n55))) (or (not |power of d1 is up'|) |leader of d1 is none'|
    (not |power of d3 is up'|) |leader of d3 is none'| n84 n85 n96 n97 n98 n103 n115))))
(declare-const n117 Bool)
(assert (= n117 (and (not n27) (not n94) (not n116))))
(declare-const n118 Bool)
(assert (= n118 (and (or (not |power of d3 is up'|) (not |leader of d3 is none'|) (and (not n31)
    (not n62) (not n63) (not n66))) (or (not |power of d2 is up'|) |leader of d2 is none'|
    (not |power of d3 is up'|) |leader of d3 is none'| n84 n85 n87 n108 n109 n110 n115))))
(declare-const n119 Bool)
(assert (= n119 (and (not n26) (not n107) (not n118))))
(declare-const n120 Bool)
(assert (= n120 (and |power of d3 is up'| (not |leader of d3 is none'|) (or n34 n68 n71) (not n84)
    (not n85) (not n115))))
(declare-const n121 Bool)
(assert (= n121 (and (not n117) (not n119) n120)))
(declare-const n122 Bool)
(assert (= n122 (and |power of d1 is up'| (not n77) (not n93) (not n100) (not n101))))
(declare-const n123 Bool)
(assert (= n123 (and |power of d1 is up'| (not n28) (not n78) (not n100) (not n101) (or n86 n92))))
(declare-const n124 Bool)
(assert (= n124 (and |power of d1 is up'| (not n27) (not n79) (not n93) (not n101) (or n94 n99))))
(declare-const n125 Bool)
(assert (= n125 (and |power of d2 is up'| (not n28) (not n77) (not n112) (not n113) (or n86 n105))))
(declare-const n126 Bool)
(assert (= n126 (and |power of d2 is up'| (not n78) (not n106) (not n112) (not n113))))
(declare-const n127 Bool)
(assert (= n127 (and |power of d2 is up'| (not n26) (not n79) (not n106) (not n113) (or n107 n111))))
(declare-const n128 Bool)
(assert (= n128 (and |power of d3 is up'| (not n27) (not n77) (not n119) (not n120) (or n94 n116))))
(declare-const n129 Bool)
(assert (= n129 (and |power of d3 is up'| (not n26) (not n78) (not n117) (not n120) (or n107 n118))))
(declare-const n130 Bool)
(assert (= n130 (and |power of d3 is up'| (not n79) (not n117) (not n119) (not n120))))
; Every variable has one value, and the laws of all states apply.
(assert (and n5 (or |power of d1 is up| |leader of d1 is none|) (or |power of d2 is up|
    |leader of d2 is none|) (or |power of d3 is up| |leader of d3 is none|) (or
    (not |d1 senior to d2|) (and (not |d2 senior to d1|) (not n11) (not n12))) (or
    (not |d1 senior to d2|) |d1 senior to d3| |d3 senior to d2| n13) (or (not |d1 senior to d3|)
    (and (not |d3 senior to d1|) (not n11) (not n13))) (or |d1 senior to d2| (not |d1 senior to d3|)
    |d2 senior to d3| n12) (or (not |d2 senior to d1|) (and (not |d1 senior to d2|) (not n11)
    (not n12))) (or (not |d2 senior to d1|) |d2 senior to d3| |d3 senior to d1| n13) (or
    (not |d2 senior to d3|) (and (not |d3 senior to d2|) (not n12) (not n13))) (or |d1 senior to d3|
    |d2 senior to d1| (not |d2 senior to d3|) n11) (or (not |d3 senior to d1|) (and
    (not |d1 senior to d3|) (not n11) (not n13))) (or |d2 senior to d1| (not |d3 senior to d1|)
    |d3 senior to d2| n12) (or (not |d3 senior to d2|) (and (not |d2 senior to d3|) (not n12)
    (not n13))) (or |d1 senior to d2| |d3 senior to d1| (not |d3 senior to d2|) n11)))
; After the event (marked ') every variable has one value again.
(assert n10)
; The state is settled.
(assert (and (or (not |power of d1 is up|) |leader of d1 is d1| (and |leader of d1 is d2| (not n19))
    (and |leader of d1 is d3| (not n18))) (or (not |power of d2 is up|) |leader of d2 is d2| (and
    |leader of d2 is d1| (not n19)) (and |leader of d2 is d3| (not n17))) (or
    (not |power of d3 is up|) |leader of d3 is d3| (and |leader of d3 is d1| (not n18)) (and
    |leader of d3 is d2| (not n17))) (or (not n14) (and |leader of d1 is none|
    |leader of d2 is none|) (and |leader of d1 is d1| |leader of d2 is d1|) (and
    |leader of d1 is d2| |leader of d2 is d2|) (and |leader of d1 is d3| |leader of d2 is d3|)) (or
    (not n15) (and |leader of d1 is none| |leader of d3 is none|) (and |leader of d1 is d1|
    |leader of d3 is d1|) (and |leader of d1 is d2| |leader of d3 is d2|) (and |leader of d1 is d3|
    |leader of d3 is d3|)) (or (not n16) (and |leader of d2 is none| |leader of d3 is none|) (and
    |leader of d2 is d1| |leader of d3 is d1|) (and |leader of d2 is d2| |leader of d3 is d2|) (and
    |leader of d2 is d3| |leader of d3 is d3|))))
; The event changes neither the power nor the leader of any device.
(assert (and (or (and |leader of d1 is none| |leader of d1 is none'|) (and |leader of d1 is d1|
    |leader of d1 is d1'|) (and |leader of d1 is d2| |leader of d1 is d2'|) (and
    |leader of d1 is d3| |leader of d1 is d3'|)) (or (and |power of d1 is off| |power of d1 is off'|)
    (and |power of d1 is starting| |power of d1 is starting'|) (and |power of d1 is up|
    |power of d1 is up'|) (and |power of d1 is held| |power of d1 is held'|)) (or (and
    |leader of d2 is none| |leader of d2 is none'|) (and |leader of d2 is d1| |leader of d2 is d1'|)
    (and |leader of d2 is d2| |leader of d2 is d2'|) (and |leader of d2 is d3| |leader of d2 is d3'|))
    (or (and |power of d2 is off| |power of d2 is off'|) (and |power of d2 is starting|
    |power of d2 is starting'|) (and |power of d2 is up| |power of d2 is up'|) (and
    |power of d2 is held| |power of d2 is held'|)) (or (and |leader of d3 is none|
    |leader of d3 is none'|) (and |leader of d3 is d1| |leader of d3 is d1'|) (and
    |leader of d3 is d2| |leader of d3 is d2'|) (and |leader of d3 is d3| |leader of d3 is d3'|))
    (or (and |power of d3 is off| |power of d3 is off'|) (and |power of d3 is starting|
    |power of d3 is starting'|) (and |power of d3 is up| |power of d3 is up'|) (and
    |power of d3 is held| |power of d3 is held'|))))
; The event changes no link.
(assert (and (= n14 n23) (= n15 n24) (= n16 n25)))
; And this is false: a pass after the event holds and restarts no one and changes no leader.
(assert (or n93 n100 n101 n106 n112 n113 n117 n119 n120 (and (or (not |leader of d1 is none'|)
    (not (ite |power of d1 is up'| (and (not n122) (not n123) (not n124)) |leader of d1 is none'|)))
    (or (not |leader of d1 is d1'|) (not (ite |power of d1 is up'| n122 |leader of d1 is d1'|))) (or
    (not |leader of d1 is d2'|) (not (ite |power of d1 is up'| n123 |leader of d1 is d2'|))) (or
    (not |leader of d1 is d3'|) (not (ite |power of d1 is up'| n124 |leader of d1 is d3'|)))) (and
    (or (not |power of d1 is off'|) n93 n100 n101) (or (not |power of d1 is up'|) n93 n100 n101) (or
    (not |power of d1 is starting'|) (and (not n102) (or (not |power of d1 is starting'|) n93 n100)))
    (or (not |power of d1 is held'|) n102)) (and (or (not |leader of d2 is none'|) (not (ite
    |power of d2 is up'| (and (not n125) (not n126) (not n127)) |leader of d2 is none'|))) (or
    (not |leader of d2 is d1'|) (not (ite |power of d2 is up'| n125 |leader of d2 is d1'|))) (or
    (not |leader of d2 is d2'|) (not (ite |power of d2 is up'| n126 |leader of d2 is d2'|))) (or
    (not |leader of d2 is d3'|) (not (ite |power of d2 is up'| n127 |leader of d2 is d3'|)))) (and
    (or (not |power of d2 is off'|) n106 n112 n113) (or (not |power of d2 is up'|) n106 n112 n113)
    (or (not |power of d2 is starting'|) (and (not n114) (or (not |power of d2 is starting'|) n106
    n112))) (or (not |power of d2 is held'|) n114)) (and (or (not |leader of d3 is none'|) (not (ite
    |power of d3 is up'| (and (not n128) (not n129) (not n130)) |leader of d3 is none'|))) (or
    (not |leader of d3 is d1'|) (not (ite |power of d3 is up'| n128 |leader of d3 is d1'|))) (or
    (not |leader of d3 is d2'|) (not (ite |power of d3 is up'| n129 |leader of d3 is d2'|))) (or
    (not |leader of d3 is d3'|) (not (ite |power of d3 is up'| n130 |leader of d3 is d3'|)))) (and
    (or (not |power of d3 is off'|) n117 n119 n120) (or (not |power of d3 is up'|) n117 n119 n120)
    (or (not |power of d3 is starting'|) (and (not n121) (or (not |power of d3 is starting'|) n117
    n119))) (or (not |power of d3 is held'|) n121))))
(check-sat)
(exit)
