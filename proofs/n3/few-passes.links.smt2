; What the lemma takes for given, together with the opposite of what it claims. There is no such
; state: the lemma holds.
;
; Of 3 devices, any two of which may be linked. proofs/few-passes.md of cairn tells the lemma, with
; a proof by hand for every number of devices. Written by proofs/generate, from the formulas that
; cairn proves with.
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
(assert (= n6 (and (not |power of d1 is up|) (not |power of d1 is held|))))
(declare-const n7 Bool)
(assert (= n7 (and (not |power of d2 is up|) (not |power of d2 is held|))))
(declare-const n8 Bool)
(assert (= n8 (and (not |power of d3 is up|) (not |power of d3 is held|))))
(declare-const n9 Bool)
(assert (= n9 (and |power of d1 is up| |power of d2 is up| (not |operational side of d1/2 is none|)
    (not |operational side of d2/1 is none|) |d1/2 enabled| |d2/1 enabled| |d1--d2 plugged|
    (not |d1--d2 broken|) (not n6) (not n7))))
(declare-const n10 Bool)
(assert (= n10 (and |power of d1 is up| |power of d3 is up| (not |operational side of d1/3 is none|)
    (not |operational side of d3/1 is none|) |d1/3 enabled| |d3/1 enabled| |d1--d3 plugged|
    (not |d1--d3 broken|) (not n6) (not n8))))
(declare-const n11 Bool)
(assert (= n11 (and |power of d2 is up| |power of d3 is up| (not |operational side of d2/3 is none|)
    (not |operational side of d3/2 is none|) |d2/3 enabled| |d3/2 enabled| |d2--d3 plugged|
    (not |d2--d3 broken|) (not n7) (not n8))))
(declare-const n12 Bool)
(assert (= n12 (and (not n11) (or (not n9) (not n10)))))
(declare-const n13 Bool)
(assert (= n13 (and (not n10) (or (not n9) n12))))
(declare-const n14 Bool)
(assert (= n14 (and (not n9) (or n12 n13))))
(declare-const n15 Bool)
(assert (= n15 (and |power of d1 is up| (not |leader of d1 is none|))))
(declare-const n16 Bool)
(assert (= n16 (and |power of d1 is up| |leader of d1 is d1|)))
(declare-const n17 Bool)
(assert (= n17 (and |power of d2 is up| (not |leader of d2 is none|))))
(declare-const n18 Bool)
(assert (= n18 (and |power of d2 is up| |leader of d2 is d2|)))
(declare-const n19 Bool)
(assert (= n19 (and |power of d3 is up| (not |leader of d3 is none|))))
(declare-const n20 Bool)
(assert (= n20 (and |power of d3 is up| |leader of d3 is d3|)))
(declare-const n21 Bool)
(assert (= n21 (and (not |number of d2 is 2|) (not |number of d2 is 3|))))
(declare-const n22 Bool)
(assert (= n22 (and (not |number of d1 is 2|) (not |number of d1 is 3|))))
(declare-const n23 Bool)
(assert (= n23 (and (or (not |number of d1 is 3|) (not |number of d2 is 2|)) (or
    (not |number of d2 is 1|) n22))))
(declare-const n24 Bool)
(assert (= n24 (and |priority of d1 is 3| |priority of d2 is 2|)))
(declare-const n25 Bool)
(assert (= n25 (and (not |priority of d1 is 2|) (not |priority of d1 is 3|))))
(declare-const n26 Bool)
(assert (= n26 (and |priority of d2 is 1| (not n25))))
(declare-const n27 Bool)
(assert (= n27 (and |priority of d1 is 2| |priority of d2 is 3|)))
(declare-const n28 Bool)
(assert (= n28 (and (not |priority of d2 is 2|) (not |priority of d2 is 3|))))
(declare-const n29 Bool)
(assert (= n29 (and |priority of d1 is 1| (not n28))))
(declare-const n30 Bool)
(assert (= n30 (and (or |d1 senior to d2| (and (not |d2 senior to d1|) (or (and |number of d1 is 2|
    |number of d2 is 3|) (and |number of d1 is 1| (not n21)) n23))) (not n27) (not n29))))
(declare-const n31 Bool)
(assert (= n31 (and |power of d2 is up| |leader of d2 is d2| (not n14) (not n24) (not n26) (not n30))))
(declare-const n32 Bool)
(assert (= n32 (and (not |number of d3 is 2|) (not |number of d3 is 3|))))
(declare-const n33 Bool)
(assert (= n33 (and (or (not |number of d1 is 3|) (not |number of d3 is 2|)) (or
    (not |number of d3 is 1|) n22))))
(declare-const n34 Bool)
(assert (= n34 (and |priority of d1 is 3| |priority of d3 is 2|)))
(declare-const n35 Bool)
(assert (= n35 (and |priority of d3 is 1| (not n25))))
(declare-const n36 Bool)
(assert (= n36 (and |priority of d1 is 2| |priority of d3 is 3|)))
(declare-const n37 Bool)
(assert (= n37 (and (not |priority of d3 is 2|) (not |priority of d3 is 3|))))
(declare-const n38 Bool)
(assert (= n38 (and |priority of d1 is 1| (not n37))))
(declare-const n39 Bool)
(assert (= n39 (and (or |d1 senior to d3| (and (not |d3 senior to d1|) (or (and |number of d1 is 2|
    |number of d3 is 3|) (and |number of d1 is 1| (not n32)) n33))) (not n36) (not n38))))
(declare-const n40 Bool)
(assert (= n40 (and |power of d3 is up| |leader of d3 is d3| (not n13) (not n34) (not n35) (not n39))))
(declare-const n41 Bool)
(assert (= n41 (and (not n24) (not n26) (or |d2 senior to d1| (and (not |d1 senior to d2|) (not n23))))))
(declare-const n42 Bool)
(assert (= n42 (and |power of d1 is up| |leader of d1 is d1| (not n14) (not n27) (not n29) (not n41))))
(declare-const n43 Bool)
(assert (= n43 (and (or (not |number of d2 is 3|) (not |number of d3 is 2|)) (or
    (not |number of d3 is 1|) n21))))
(declare-const n44 Bool)
(assert (= n44 (and |priority of d2 is 3| |priority of d3 is 2|)))
(declare-const n45 Bool)
(assert (= n45 (and |priority of d3 is 1| (not n28))))
(declare-const n46 Bool)
(assert (= n46 (and |priority of d2 is 2| |priority of d3 is 3|)))
(declare-const n47 Bool)
(assert (= n47 (and |priority of d2 is 1| (not n37))))
(declare-const n48 Bool)
(assert (= n48 (and (or |d2 senior to d3| (and (not |d3 senior to d2|) (or (and |number of d2 is 2|
    |number of d3 is 3|) (and |number of d2 is 1| (not n32)) n43))) (not n46) (not n47))))
(declare-const n49 Bool)
(assert (= n49 (and |power of d3 is up| |leader of d3 is d3| (not n12) (not n44) (not n45) (not n48))))
(declare-const n50 Bool)
(assert (= n50 (and (not n34) (not n35) (or |d3 senior to d1| (and (not |d1 senior to d3|) (not n33))))))
(declare-const n51 Bool)
(assert (= n51 (and |power of d1 is up| |leader of d1 is d1| (not n13) (not n36) (not n38) (not n50))))
(declare-const n52 Bool)
(assert (= n52 (and (not n44) (not n45) (or |d3 senior to d2| (and (not |d2 senior to d3|) (not n43))))))
(declare-const n53 Bool)
(assert (= n53 (and |power of d2 is up| |leader of d2 is d2| (not n12) (not n46) (not n47) (not n52))))
(declare-const n54 Bool)
(assert (= n54 (and |leader of d1 is d2| |power of d2 is up| |leader of d2 is d2| (not n14)
    (not n42) (not n49))))
(declare-const n55 Bool)
(assert (= n55 (and |leader of d1 is d3| |power of d3 is up| |leader of d3 is d3| (not n13)
    (not n51) (not n53))))
(declare-const n56 Bool)
(assert (= n56 (and |power of d1 is up| |leader of d1 is d1| |leader of d2 is d1| (not n14)
    (not n31) (not n40))))
(declare-const n57 Bool)
(assert (= n57 (and |leader of d2 is d3| |power of d3 is up| |leader of d3 is d3| (not n12)
    (not n51) (not n53))))
(declare-const n58 Bool)
(assert (= n58 (and |power of d1 is up| |leader of d1 is d1| |leader of d3 is d1| (not n13)
    (not n31) (not n40))))
(declare-const n59 Bool)
(assert (= n59 (and |power of d2 is up| |leader of d2 is d2| |leader of d3 is d2| (not n12)
    (not n42) (not n49))))
(declare-const n60 Bool)
(assert (= n60 (and (or (not |number of d1 is 1|) (not |number of d2 is 1|)) (or
    (not |number of d1 is 2|) (not |number of d2 is 2|)) (or (not |number of d1 is 3|)
    (not |number of d2 is 3|)))))
(declare-const n61 Bool)
(assert (= n61 (and (not n18) (or (not |leader of d2 is d1|) n14) (or (not |leader of d2 is d3|) n12))))
(declare-const n62 Bool)
(assert (= n62 (and |leader of d1 is d1| |leader of d2 is d1|)))
(declare-const n63 Bool)
(assert (= n63 (and |leader of d1 is d2| |leader of d2 is d2|)))
(declare-const n64 Bool)
(assert (= n64 (and |leader of d1 is d3| |leader of d2 is d3|)))
(declare-const n65 Bool)
(assert (= n65 (and |leader of d1 is d1| (not n31) (not n40))))
(declare-const n66 Bool)
(assert (= n66 (and (not n14) (not n60) (or (and |power of d1 is up| |leader of d1 is none| (or n17
    n27 n29 n41)) (and |power of d1 is up| (not |leader of d1 is none|) |power of d2 is up|
    (not |leader of d2 is none|) (not n54) (not n55) (not n61) (not n62) (not n63) (not n64)
    (not n65))))))
(declare-const n67 Bool)
(assert (= n67 (and (or (not |number of d1 is 1|) (not |number of d3 is 1|)) (or
    (not |number of d1 is 2|) (not |number of d3 is 2|)) (or (not |number of d1 is 3|)
    (not |number of d3 is 3|)))))
(declare-const n68 Bool)
(assert (= n68 (and (not n20) (or (not |leader of d3 is d1|) n13) (or (not |leader of d3 is d2|) n12))))
(declare-const n69 Bool)
(assert (= n69 (and |leader of d1 is d1| |leader of d3 is d1|)))
(declare-const n70 Bool)
(assert (= n70 (and |leader of d1 is d2| |leader of d3 is d2|)))
(declare-const n71 Bool)
(assert (= n71 (and |leader of d1 is d3| |leader of d3 is d3|)))
(declare-const n72 Bool)
(assert (= n72 (and (not n13) (not n67) (or (and |power of d1 is up| |leader of d1 is none| (or n19
    n36 n38 n50)) (and |power of d1 is up| (not |leader of d1 is none|) |power of d3 is up|
    (not |leader of d3 is none|) (not n54) (not n55) (not n65) (not n68) (not n69) (not n70)
    (not n71))))))
(declare-const n73 Bool)
(assert (= n73 (and |power of d1 is up| (not |leader of d1 is none|) (not n66) (not n72) (or (and
    (not n16) (or (not |power of d2 is up|) (not |leader of d2 is d2|) n14) (or
    (not |power of d3 is up|) (not |leader of d3 is d3|) n13)) (and (or (not |power of d1 is up|)
    (not |leader of d1 is d1|) n31 n40) (not n54) (not n55))))))
(declare-const n74 Bool)
(assert (= n74 (and (not n16) (or (not |leader of d1 is d2|) n14) (or (not |leader of d1 is d3|) n13))))
(declare-const n75 Bool)
(assert (= n75 (and |leader of d2 is d2| (not n42) (not n49))))
(declare-const n76 Bool)
(assert (= n76 (and (not n14) (not n60) (or (and |power of d2 is up| |leader of d2 is none| (or n15
    n24 n26 n30)) (and |power of d1 is up| (not |leader of d1 is none|) |power of d2 is up|
    (not |leader of d2 is none|) (not n56) (not n57) (not n62) (not n63) (not n64) (not n74)
    (not n75))))))
(declare-const n77 Bool)
(assert (= n77 (and (or (not |number of d2 is 1|) (not |number of d3 is 1|)) (or
    (not |number of d2 is 2|) (not |number of d3 is 2|)) (or (not |number of d2 is 3|)
    (not |number of d3 is 3|)))))
(declare-const n78 Bool)
(assert (= n78 (and |leader of d2 is d1| |leader of d3 is d1|)))
(declare-const n79 Bool)
(assert (= n79 (and |leader of d2 is d2| |leader of d3 is d2|)))
(declare-const n80 Bool)
(assert (= n80 (and |leader of d2 is d3| |leader of d3 is d3|)))
(declare-const n81 Bool)
(assert (= n81 (and (not n12) (not n77) (or (and |power of d2 is up| |leader of d2 is none| (or n19
    n46 n47 n52)) (and |power of d2 is up| (not |leader of d2 is none|) |power of d3 is up|
    (not |leader of d3 is none|) (not n56) (not n57) (not n68) (not n75) (not n78) (not n79)
    (not n80))))))
(declare-const n82 Bool)
(assert (= n82 (and |power of d2 is up| (not |leader of d2 is none|) (not n76) (not n81) (or (and
    (not n18) (or (not |power of d1 is up|) (not |leader of d1 is d1|) n14) (or
    (not |power of d3 is up|) (not |leader of d3 is d3|) n12)) (and (or (not |power of d2 is up|)
    (not |leader of d2 is d2|) n42 n49) (not n56) (not n57))))))
(declare-const n83 Bool)
(assert (= n83 (and |leader of d3 is d3| (not n51) (not n53))))
(declare-const n84 Bool)
(assert (= n84 (and (not n13) (not n67) (or (and |power of d3 is up| |leader of d3 is none| (or n15
    n34 n35 n39)) (and |power of d1 is up| (not |leader of d1 is none|) |power of d3 is up|
    (not |leader of d3 is none|) (not n58) (not n59) (not n69) (not n70) (not n71) (not n74)
    (not n83))))))
(declare-const n85 Bool)
(assert (= n85 (and (not n12) (not n77) (or (and |power of d3 is up| |leader of d3 is none| (or n17
    n44 n45 n48)) (and |power of d2 is up| (not |leader of d2 is none|) |power of d3 is up|
    (not |leader of d3 is none|) (not n58) (not n59) (not n61) (not n78) (not n79) (not n80)
    (not n83))))))
(declare-const n86 Bool)
(assert (= n86 (and |power of d3 is up| (not |leader of d3 is none|) (not n84) (not n85) (or (and
    (not n20) (or (not |power of d1 is up|) (not |leader of d1 is d1|) n13) (or
    (not |power of d2 is up|) (not |leader of d2 is d2|) n12)) (and (or (not |power of d3 is up|)
    (not |leader of d3 is d3|) n51 n53) (not n58) (not n59))))))
(declare-const n87 Bool)
(assert (= n87 (and (or (not |power of d1 is up|) n66 n72 n73) (or n73 (and
    (not |power of d1 is held|) (not n66) (not n72))))))
(declare-const n88 Bool)
(assert (= n88 (and (or (not |power of d2 is up|) n76 n81 n82) (or n82 (and
    (not |power of d2 is held|) (not n76) (not n81))))))
(declare-const n89 Bool)
(assert (= n89 (and (or (not |power of d3 is up|) n84 n85 n86) (or n86 (and
    (not |power of d3 is held|) (not n84) (not n85))))))
; Every variable has one value, and the laws of all states apply.
(assert (and n5 (or |power of d1 is up| |leader of d1 is none|) (or |power of d2 is up|
    |leader of d2 is none|) (or |power of d3 is up| |leader of d3 is none|) (or
    (not |d1 senior to d2|) (and (not |d2 senior to d1|) (not n6) (not n7))) (or
    (not |d1 senior to d2|) |d1 senior to d3| |d3 senior to d2| n8) (or (not |d1 senior to d3|) (and
    (not |d3 senior to d1|) (not n6) (not n8))) (or |d1 senior to d2| (not |d1 senior to d3|)
    |d2 senior to d3| n7) (or (not |d2 senior to d1|) (and (not |d1 senior to d2|) (not n6) (not n7)))
    (or (not |d2 senior to d1|) |d2 senior to d3| |d3 senior to d1| n8) (or (not |d2 senior to d3|)
    (and (not |d3 senior to d2|) (not n7) (not n8))) (or |d1 senior to d3| |d2 senior to d1|
    (not |d2 senior to d3|) n6) (or (not |d3 senior to d1|) (and (not |d1 senior to d3|) (not n6)
    (not n8))) (or |d2 senior to d1| (not |d3 senior to d1|) |d3 senior to d2| n7) (or
    (not |d3 senior to d2|) (and (not |d2 senior to d3|) (not n7) (not n8))) (or |d1 senior to d2|
    |d3 senior to d1| (not |d3 senior to d2|) n6)))
; And this is false: after a pass a link is there exactly where it was before and both its devices
; are still up.
(assert (or (xor (and |power of d1 is up| |power of d2 is up|
    (not |operational side of d1/2 is none|) (not |operational side of d2/1 is none|) (not n66)
    (not n72) (not n73) (not n76) (not n81) (not n82) |d1/2 enabled| |d2/1 enabled| |d1--d2 plugged|
    (not |d1--d2 broken|) (not n87) (not n88)) (and n9 |power of d1 is up| |power of d2 is up|
    (not n66) (not n72) (not n73) (not n76) (not n81) (not n82))) (xor (and |power of d1 is up|
    |power of d3 is up| (not |operational side of d1/3 is none|)
    (not |operational side of d3/1 is none|) (not n66) (not n72) (not n73) (not n84) (not n85)
    (not n86) |d1/3 enabled| |d3/1 enabled| |d1--d3 plugged| (not |d1--d3 broken|) (not n87)
    (not n89)) (and n10 |power of d1 is up| |power of d3 is up| (not n66) (not n72) (not n73)
    (not n84) (not n85) (not n86))) (xor (and |power of d2 is up| |power of d3 is up|
    (not |operational side of d2/3 is none|) (not |operational side of d3/2 is none|) (not n76)
    (not n81) (not n82) (not n84) (not n85) (not n86) |d2/3 enabled| |d3/2 enabled| |d2--d3 plugged|
    (not |d2--d3 broken|) (not n88) (not n89)) (and n11 |power of d2 is up| |power of d3 is up|
    (not n76) (not n81) (not n82) (not n84) (not n85) (not n86)))))
(check-sat)
(exit)
